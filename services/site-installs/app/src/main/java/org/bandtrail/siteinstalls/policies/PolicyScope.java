package org.bandtrail.siteinstalls.policies;

import java.util.List;
import org.bandtrail.kernel.Identity;
import org.jspecify.annotations.Nullable;

/**
 * For what a version of the policy holds.
 *
 * @param programme code of the programme, null for all
 * @param pest EPPO code of the pest, null for all
 */
public record PolicyScope(
        @Nullable String programme, @Nullable String pest) {
    /** The default of the house: any programme, any pest. */
    public static final PolicyScope HOUSE = new PolicyScope(null, null);

    /**
     * Spells both as identities; blanks count as nothing said.
     *
     * @throws IllegalArgumentException naming what is not spelt as an identity
     */
    public PolicyScope {
        programme = programme == null || programme.isBlank() ? null : Identity.checked("programme", programme);
        pest = pest == null || pest.isBlank() ? null : Identity.checked("pest", pest);
    }

    /** Where to look, the closest first: this programme and pest, the pest in any programme, the house. */
    public List<PolicyScope> fromClosest() {
        if (pest == null) {
            return List.of(HOUSE);
        }
        PolicyScope anyProgramme = new PolicyScope(null, pest);
        return programme == null ? List.of(anyProgramme, HOUSE) : List.of(this, anyProgramme, HOUSE);
    }

    /** In words: the house, or pest and programme. */
    public String words() {
        if (pest == null) {
            return programme == null ? "the house" : "programme " + programme;
        }
        return programme == null ? "pest " + pest : "pest %s in programme %s".formatted(pest, programme);
    }
}
