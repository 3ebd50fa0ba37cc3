package org.bandtrail.supplystock.costpolicies;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/**
 * Names what a policy is about. A programme has one: all its fasteners are of similar nature and use.
 *
 * @param value upper-case letters, digits and dashes
 */
public record CostPolicyId(@JsonValue String value) {
    /** All fasteners of the programme. */
    public static final CostPolicyId FASTENERS = new CostPolicyId("FASTENERS");

    /** Accepts small letters; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public CostPolicyId {
        value = Identity.checked("cost policy", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
