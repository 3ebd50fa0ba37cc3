package org.bandtrail.supplystock.countplans;

import org.bandtrail.supplystock.countrules.CountRules;

/** How much an item matters by its value. */
public enum ValueClass {
    /** The few items that make up most of the value. */
    A,
    /** The next ones. */
    B,
    /** The many that make up the rest, and whatever has no value. */
    C;

    /** Days between two counts. */
    public int days(CountRules rules) {
        return switch (this) {
            case A -> rules.daysA();
            case B -> rules.daysB();
            case C -> rules.daysC();
        };
    }
}
