package org.bandtrail.supplystock.budgets;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.Identity;

/**
 * Names a budget.
 *
 * @param value upper-case letters, digits and dashes
 */
public record BudgetId(@JsonValue String value) {
    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public BudgetId {
        value = Identity.checked("budget", value);
    }

    @Override
    public String toString() {
        return value;
    }
}
