package org.bandtrail.supplystock.grants;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a grant.
 *
 * @param terms what is agreed now, null until registered
 */
public record Grant(@Nullable GrantTerms terms) {
    /** A grant nobody has entered. */
    public static final Grant UNKNOWN = new Grant(null);

    /**
     * What a command makes happen.
     *
     * @throws GrantRefused if the wish cannot be granted
     */
    public List<GrantEvent> decide(GrantCommand command) {
        return switch (command) {
            case GrantCommand.Register register -> {
                if (terms != null) {
                    throw new GrantRefused.GrantKnown(register.grantId(), terms.name());
                }
                checked(register.grantId(), register.terms());
                yield List.of(new GrantEvent.Registered(
                        register.grantId(), register.terms(), register.by(), register.occurred()));
            }
            case GrantCommand.ChangeTerms change -> {
                if (terms == null) {
                    throw new GrantRefused.GrantUnknown(change.grantId());
                }
                checked(change.grantId(), change.terms());
                if (!change.terms().amount().currency().equals(terms.amount().currency())) {
                    throw new GrantRefused.GrantCurrencyFixed(
                            change.grantId(),
                            terms.amount().currency(),
                            change.terms().amount().currency());
                }
                if (change.reason().isBlank()) {
                    throw new GrantRefused.GrantReasonMissing(change.grantId());
                }
                yield List.of(new GrantEvent.TermsChanged(
                        change.grantId(), change.terms(), change.reason().strip(), change.by(), change.occurred()));
            }
        };
    }

    private static void checked(GrantId grant, GrantTerms terms) {
        if (terms.name().isBlank()) {
            throw new GrantRefused.GrantTermsUnfit(grant, "name", terms.name(), "Write what people call it.");
        }
        if (terms.amount().minor() <= 0) {
            throw new GrantRefused.GrantTermsUnfit(
                    grant, "amount", terms.amount(), "Give what may be spent, above zero.");
        }
        if (terms.until().isBefore(terms.from())) {
            throw new GrantRefused.GrantTermsUnfit(
                    grant, "last day", terms.until(), "Give a day not before " + terms.from() + ".");
        }
    }

    /** The grant after an event. */
    public Grant evolve(GrantEvent event) {
        return switch (event) {
            case GrantEvent.Registered registered -> new Grant(registered.terms());
            case GrantEvent.TermsChanged changed -> new Grant(changed.terms());
        };
    }
}
