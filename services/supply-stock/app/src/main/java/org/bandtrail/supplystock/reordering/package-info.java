/**
 * When to order what, as pure functions of numbers. {@code DailyUse} turns recorded use into a mean and a spread,
 * {@code LeadTimeDemand} carries them over the supplier's lead time, {@code ReorderPoint} and {@code SafetyStock} add
 * what a service level costs, {@code FillRate} answers the other question people mean by "98 percent", and
 * {@code RunsOut} says when the stock ends. Every class names its formula, symbols, units, published source and range,
 * and refuses what is outside by name. Quantities are millimetres or pieces, never mixed; the only rounding is the last
 * step, up to a whole unit. Too little data is said, not smoothed over.
 */
@NullMarked
package org.bandtrail.supplystock.reordering;

import org.jspecify.annotations.NullMarked;
