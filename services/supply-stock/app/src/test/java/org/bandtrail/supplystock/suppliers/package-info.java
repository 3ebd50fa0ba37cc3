/**
 * Tests of suppliers, quotes and order units. Conversions are checked against the exact values of NIST and the codes of
 * UN/CEFACT. Price breaks are tried at, just below and just above each
 * break. Refusals are checked by the words a person reads.
 */
@NullMarked
package org.bandtrail.supplystock.suppliers;

import org.jspecify.annotations.NullMarked;
