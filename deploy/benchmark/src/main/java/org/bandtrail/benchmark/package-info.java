/**
 * Measures what our ways cost over raw JDBC on the same PostgreSQL in the same run. Each pair runs turn by turn, so
 * that a slow moment of the machine meets both; the result is the ratio of each turn, with median and spread. A rate
 * alone says little on another machine; a ratio does. Run it with {@code deploy/measure} on an idle machine, never as a
 * test.
 */
@NullMarked
package org.bandtrail.benchmark;

import org.jspecify.annotations.NullMarked;
