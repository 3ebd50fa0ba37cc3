package org.bandtrail.supplystock.transfers;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a transfer, which is also the place of what is on its way. */
public record TransferId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public TransferId {
        value = Identity.checked("transfer", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
