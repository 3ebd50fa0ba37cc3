package org.bandtrail.supplystock.suppliers;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a supplier's entry. */
public sealed interface SupplierEvent {
    /** The supplier it is about. */
    SupplierId supplierId();

    /** Registered under a name. */
    @StoredAs("supplier.registered")
    @Revision("1")
    record Registered(SupplierId supplierId, String name, PersonId by, Occurred occurred) implements SupplierEvent {}

    /**
     * Quoted a price.
     *
     * @param number 1, 2, 3 ... with this supplier
     */
    @StoredAs("supplier.quoted")
    @Revision("1")
    record Quoted(SupplierId supplierId, int number, Quote quote, PersonId by, Occurred occurred)
            implements SupplierEvent {}

    /** A quote is no longer ordered by. */
    @StoredAs("supplier.quote-withdrawn")
    @Revision("1")
    record QuoteWithdrawn(SupplierId supplierId, int number, String reason, PersonId by, Occurred occurred)
            implements SupplierEvent {}
}
