package org.bandtrail.siteinstalls.cutplans;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Names a cut plan, for example {@code CP-0001}. */
public record CutPlanId(@JsonValue String value) {

    /**
     * Spells it as identities are spelt.
     *
     * @throws IllegalArgumentException naming the value if it is none
     */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public CutPlanId {
        value = Identity.checked("cut plan", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
