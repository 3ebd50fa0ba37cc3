package org.bandtrail.supplystock.deliveries;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a delivery, as the depot numbers them. */
public record DeliveryId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public DeliveryId {
        value = Identity.checked("delivery", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
