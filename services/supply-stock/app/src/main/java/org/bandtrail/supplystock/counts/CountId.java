package org.bandtrail.supplystock.counts;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of one count. */
public record CountId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public CountId {
        value = Identity.checked("count", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
