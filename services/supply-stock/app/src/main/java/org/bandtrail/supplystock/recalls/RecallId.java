package org.bandtrail.supplystock.recalls;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a recall. */
public record RecallId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public RecallId {
        value = Identity.checked("recall", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
