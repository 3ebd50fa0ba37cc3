package org.bandtrail.supplystock.suppliers;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a supplier's entry.
 *
 * @param name what people call it, null until registered
 * @param quotes how many quotes were noted
 * @param withdrawn numbers of quotes that are no longer ordered by
 */
public record Supplier(@Nullable String name, int quotes, Set<Integer> withdrawn) {
    /** A supplier nobody has registered. */
    public static final Supplier UNKNOWN = new Supplier(null, 0, Set.of());

    /**
     * What a command makes happen.
     *
     * @throws SupplierRefused if the wish cannot be granted
     */
    public List<SupplierEvent> decide(SupplierCommand command) {
        return switch (command) {
            case SupplierCommand.Register register -> register(register);
            case SupplierCommand.NoteQuote note -> note(note);
            case SupplierCommand.WithdrawQuote withdraw -> withdraw(withdraw);
        };
    }

    private List<SupplierEvent> register(SupplierCommand.Register register) {
        if (name != null) {
            throw new SupplierRefused.SupplierKnownAlready(register.supplierId(), name);
        }
        if (register.name().isBlank()) {
            throw new SupplierRefused.SupplierWithoutName(register.supplierId());
        }
        return List.of(new SupplierEvent.Registered(
                register.supplierId(), register.name().strip(), register.by(), register.occurred()));
    }

    private List<SupplierEvent> note(SupplierCommand.NoteQuote note) {
        if (name == null) {
            throw new SupplierRefused.SupplierUnknown(note.supplierId());
        }
        String fault = note.quote().fault();
        if (fault != null) {
            throw new SupplierRefused.QuoteDoesNotFit(note.supplierId(), note.quote(), fault);
        }
        return List.of(
                new SupplierEvent.Quoted(note.supplierId(), quotes + 1, note.quote(), note.by(), note.occurred()));
    }

    private List<SupplierEvent> withdraw(SupplierCommand.WithdrawQuote withdraw) {
        if (withdraw.quote() < 1 || withdraw.quote() > quotes) {
            throw new SupplierRefused.QuoteUnknown(withdraw.supplierId(), withdraw.quote());
        }
        if (withdraw.reason().isBlank()) {
            throw new SupplierRefused.WithdrawalWithoutReason(withdraw.supplierId(), withdraw.quote());
        }
        if (withdrawn.contains(withdraw.quote())) {
            return List.of();
        }
        return List.of(new SupplierEvent.QuoteWithdrawn(
                withdraw.supplierId(),
                withdraw.quote(),
                withdraw.reason().strip(),
                withdraw.by(),
                withdraw.occurred()));
    }

    /** The entry after an event. */
    public Supplier evolve(SupplierEvent event) {
        return switch (event) {
            case SupplierEvent.Registered registered -> new Supplier(registered.name(), quotes, withdrawn);
            case SupplierEvent.Quoted quoted -> new Supplier(name, quoted.number(), withdrawn);
            case SupplierEvent.QuoteWithdrawn gone ->
                new Supplier(
                        name,
                        quotes,
                        Stream.concat(withdrawn.stream(), Stream.of(gone.number()))
                                .collect(Collectors.toUnmodifiableSet()));
        };
    }
}
