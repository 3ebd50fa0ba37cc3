package org.bandtrail.supplystock.grants;

import java.time.LocalDate;
import org.bandtrail.kernel.Money;

/**
 * What was agreed about a grant.
 *
 * @param name what people call it
 * @param amount all that may be spent of it, above zero
 * @param from first day it is good for
 * @param until last day it is good for, not before {@code from}
 */
public record GrantTerms(String name, Money amount, LocalDate from, LocalDate until) {}
