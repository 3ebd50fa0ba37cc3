package org.bandtrail.supplystock.purchases;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of an order to a supplier, as it stands on the paper. */
public record PurchaseId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public PurchaseId {
        value = Identity.checked("purchase", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
