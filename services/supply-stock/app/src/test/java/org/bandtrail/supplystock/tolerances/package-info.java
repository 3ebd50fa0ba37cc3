/**
 * Tests of {@code tolerances}. Limits are tested at their boundaries; the policy by given, when and then. Nothing here
 * needs the database.
 */
@NullMarked
package org.bandtrail.supplystock.tolerances;

import org.jspecify.annotations.NullMarked;
