package org.bandtrail.eventexchange;

import org.bandtrail.testing.HouseRules;
import org.junit.jupiter.api.Test;

/** The event exchange keeps the rules of the house. */
class HouseRulesTest {
    @Test
    void the_house_rules_hold() {
        HouseRules.checkWithoutFeatures("org.bandtrail.eventexchange");
    }
}
