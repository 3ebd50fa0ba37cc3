package org.bandtrail.supplystock.suppliers;

import java.time.LocalDate;
import org.bandtrail.eventstore.Refusal;

/** Why a wish about a supplier or a quote is refused. */
public abstract sealed class SupplierRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private SupplierRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class SupplierKnownAlready extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        SupplierKnownAlready(SupplierId supplier, String name) {
            super("Supplier [%s] is registered already as %s. Choose another identity.".formatted(supplier, name));
        }
    }

    /** A supplier needs a name. */
    public static final class SupplierWithoutName extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        SupplierWithoutName(SupplierId supplier) {
            super("Supplier [%s] needs a name. Write what people call it.".formatted(supplier));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** Nobody registered the supplier. */
    public static final class SupplierUnknown extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        /** Names the supplier. */
        public SupplierUnknown(SupplierId supplier) {
            super("Supplier [%s] is not registered. Register it first, or check the identity.".formatted(supplier));
        }
    }

    /** A quote contradicts itself. */
    public static final class QuoteDoesNotFit extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        QuoteDoesNotFit(SupplierId supplier, Quote quote, String fault) {
            super("Quote of [%s] for [%s]: %s".formatted(supplier, quote.material(), fault));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** There is no such quote. */
    public static final class QuoteUnknown extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        /** Names the supplier and the quote's number. */
        public QuoteUnknown(SupplierId supplier, int quote) {
            super("Supplier [%s] has no quote [%d]. Look at the supplier's page for its quotes."
                    .formatted(supplier, quote));
        }
    }

    /** A withdrawal needs a reason. */
    public static final class WithdrawalWithoutReason extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        WithdrawalWithoutReason(SupplierId supplier, int quote) {
            super("Why is quote [%d] of [%s] withdrawn? Write the reason.".formatted(quote, supplier));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The quote does not hold on the day of the order. */
    public static final class QuoteNotValid extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        QuoteNotValid(SupplierId supplier, Quote quote, LocalDate day) {
            super("The quote of [%s] for [%s] holds from %s to %s, not on [%s]. Ask for a new quote, or give the price."
                    .formatted(
                            supplier,
                            quote.material(),
                            quote.validFrom(),
                            quote.validUntil() == null ? "further notice" : quote.validUntil(),
                            day));
        }
    }

    /** Less than the supplier sells. */
    public static final class BelowMinimumOrder extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        BelowMinimumOrder(SupplierId supplier, Quote quote, long units) {
            super("[%s] sells [%s] from %d %ss on, not [%d]. Order %d."
                    .formatted(
                            supplier,
                            quote.material(),
                            quote.minimumUnits(),
                            quote.packing().unit().word(),
                            units,
                            quote.orderable(units)));
        }
    }

    /** Not a multiple of the pack. */
    public static final class NotWholePacks extends SupplierRefused {
        private static final long serialVersionUID = 1L;

        NotWholePacks(SupplierId supplier, Quote quote, long units) {
            super("[%s] sells [%s] in multiples of %d %ss, not [%d]. Order %d."
                    .formatted(
                            supplier,
                            quote.material(),
                            quote.packUnits(),
                            quote.packing().unit().word(),
                            units,
                            quote.orderable(units)));
        }
    }
}
