package org.bandtrail.inspections;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.testing.HouseRules;
import org.bandtrail.testing.Modules;
import org.junit.jupiter.api.Test;

/** Inspections keeps the rules of the house. */
class HouseRulesTest {
    @Test
    void the_house_rules_hold() {
        HouseRules.check("org.bandtrail.inspections");
    }

    @Test
    void the_features_are_modules() {
        assertThat(Modules.verify(InspectionsApplication.class)).contains("bands", "published", "received");
    }
}
