package org.bandtrail.supplystock.vehicles;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/** Identity of a vehicle, as painted on it. */
public record VehicleId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public VehicleId {
        value = Identity.checked("vehicle", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
