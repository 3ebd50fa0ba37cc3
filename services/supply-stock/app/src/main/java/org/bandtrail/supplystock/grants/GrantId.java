package org.bandtrail.supplystock.grants;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/**
 * Names a grant.
 *
 * @param value upper-case letters, digits and dashes
 */
public record GrantId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public GrantId {
        value = Identity.checked("grant", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
