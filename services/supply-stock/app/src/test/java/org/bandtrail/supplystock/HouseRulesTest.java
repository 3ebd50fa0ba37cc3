package org.bandtrail.supplystock;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.testing.HouseRules;
import org.bandtrail.testing.Modules;
import org.junit.jupiter.api.Test;

class HouseRulesTest {
    @Test
    void the_house_rules_hold_in_supply_stock() {
        HouseRules.check("org.bandtrail.supplystock");
    }

    @Test
    void the_features_are_modules() {
        assertThat(Modules.verify(SupplyStockApplication.class)).contains("reels");
    }
}
