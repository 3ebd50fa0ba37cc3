package org.bandtrail.supplystock.slittings;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a slitting, which is also the place a wide length goes to and its strips come from. */
public record SlittingId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public SlittingId {
        value = Identity.checked("slitting", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
