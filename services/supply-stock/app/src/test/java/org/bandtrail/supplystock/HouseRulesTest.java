package org.bandtrail.supplystock;

import org.bandtrail.testing.HouseRules;
import org.junit.jupiter.api.Test;

class HouseRulesTest {
    @Test
    void the_house_rules_hold_in_supply_stock() {
        HouseRules.check("org.bandtrail.supplystock");
    }
}
