/**
 * Tests of waste bags. Rules are shown by given, when, then on the pure record. The law is checked by random histories
 * told in random order.
 */
@NullMarked
package org.bandtrail.inspections.bags;

import org.jspecify.annotations.NullMarked;
