/**
 * What inspections tells the other services. Every private event that others need is translated into a contract record
 * and put into the outbox in the transaction that stores it. Only this package knows the own contract.
 */
@NullMarked
package org.bandtrail.inspections.published;

import org.jspecify.annotations.NullMarked;
