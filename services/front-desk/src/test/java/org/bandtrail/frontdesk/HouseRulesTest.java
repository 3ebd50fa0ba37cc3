package org.bandtrail.frontdesk;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.testing.HouseRules;
import org.bandtrail.testing.Modules;
import org.junit.jupiter.api.Test;

/** The front desk keeps the rules of the house; it decides nothing, so those about features do not apply. */
class HouseRulesTest {
    @Test
    void the_house_rules_hold() {
        HouseRules.checkWithoutFeatures("org.bandtrail.frontdesk");
    }

    @Test
    void the_features_are_modules() {
        assertThat(Modules.verify(FrontDeskApplication.class)).contains("neighbours");
    }
}
