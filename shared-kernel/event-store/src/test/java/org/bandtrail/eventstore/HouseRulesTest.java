package org.bandtrail.eventstore;

import org.bandtrail.testing.HouseRules;
import org.junit.jupiter.api.Test;

/**
 * The event store keeps the rules of the house. Work waits a random moment before it tries again; no history sees that.
 */
class HouseRulesTest {
    @Test
    void the_house_rules_hold() {
        HouseRules.checkWithoutFeatures("org.bandtrail.eventstore", "Work");
    }
}
