package org.bandtrail.siteinstalls;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.testing.HouseRules;
import org.bandtrail.testing.Modules;
import org.junit.jupiter.api.Test;

class HouseRulesTest {
    @Test
    void the_house_rules_hold() {
        HouseRules.check("org.bandtrail.siteinstalls");
    }

    @Test
    void every_feature_is_a_module_and_none_reaches_into_another() {
        assertThat(Modules.verify(SiteInstallsApplication.class))
                .contains(
                        "bands",
                        "cutting",
                        "girths",
                        "imports",
                        "knownreels",
                        "policies",
                        "proposals",
                        "sites",
                        "trees");
    }
}
