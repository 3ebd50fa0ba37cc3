package org.bandtrail.supplystock.suppliers;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a supplier, chosen by the programme. */
public record SupplierId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public SupplierId {
        value = Identity.checked("supplier", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
