package org.bandtrail.supplystock.landedcosts;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of one amount of freight or duty that was spread. */
public record LandedCostId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public LandedCostId {
        value = Identity.checked("landed cost", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
