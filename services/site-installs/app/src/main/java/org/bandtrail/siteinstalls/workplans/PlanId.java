package org.bandtrail.siteinstalls.workplans;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of one work plan. */
public record PlanId(String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public PlanId {
        value = Identity.checked("plan", value);
    }

    /** The identity as text. */
    @JsonValue
    @Override
    public String value() {
        return value;
    }

    @Override
    public String toString() {
        return value;
    }
}
