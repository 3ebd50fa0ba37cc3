package org.bandtrail.supplystock.suppliers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplierTest {
    private static final SupplierId HOLM = new SupplierId("HOLM");
    private static final PersonId WHO = new PersonId("P-1");
    private static final Occurred WHEN = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final Supplier KNOWN =
            Supplier.UNKNOWN.evolve(new SupplierEvent.Registered(HOLM, "Holm and daughters", WHO, WHEN));

    private static Quote quote(long pack, long minimum, List<PriceBreak> breaks) {
        return new Quote(
                new MaterialCode("TAPE-127"),
                MaterialKind.TAPE,
                Packing.of(MaterialKind.TAPE, OrderUnit.REEL, "55 yd"),
                pack,
                minimum,
                9,
                breaks,
                "USD",
                LocalDate.of(2026, 1, 1),
                LocalDate.of(2026, 12, 31),
                "");
    }

    private static final Quote TAPE =
            quote(2, 4, List.of(new PriceBreak(4, 3850), new PriceBreak(10, 3501), new PriceBreak(50, 3300)));

    @ParameterizedTest
    @CsvSource({"4, 3850", "8, 3850", "10, 3501", "48, 3501", "50, 3300", "1000, 3300"})
    void the_price_is_that_of_the_last_break_reached(long units, long minor) {
        assertThat(TAPE.unitPrice(HOLM, units, DAY)).isEqualTo(Money.of(minor, "USD"));
    }

    @Test
    void what_is_not_sold_is_refused_with_what_to_order_instead() {
        assertThatThrownBy(() -> TAPE.unitPrice(HOLM, 3, DAY))
                .isInstanceOf(SupplierRefused.BelowMinimumOrder.class)
                .hasMessageEndingWith("Order 4.");
        assertThatThrownBy(() -> TAPE.unitPrice(HOLM, 9, DAY))
                .isInstanceOf(SupplierRefused.NotWholePacks.class)
                .hasMessageEndingWith("Order 10.");
    }

    @Test
    void a_quote_holds_on_its_first_and_its_last_day_and_not_a_day_longer() {
        assertThat(TAPE.holdsOn(LocalDate.of(2026, 1, 1))).isTrue();
        assertThat(TAPE.holdsOn(LocalDate.of(2026, 12, 31))).isTrue();
        assertThatThrownBy(() -> TAPE.unitPrice(HOLM, 4, LocalDate.of(2027, 1, 1)))
                .isInstanceOf(SupplierRefused.QuoteNotValid.class)
                .hasMessageContaining("[2027-01-01]");
        assertThat(TAPE.holdsOn(LocalDate.of(2025, 12, 31))).isFalse();
    }

    @Test
    void a_quote_that_contradicts_itself_is_not_noted() {
        assertFault(quote(0, 1, List.of(new PriceBreak(1, 1))), "must be 1 or more");
        assertFault(quote(1, 1, List.of()), "no price");
        assertFault(quote(1, 1, List.of(new PriceBreak(5, 100))), "holds from [5], but [1]");
        assertFault(quote(1, 1, List.of(new PriceBreak(1, 100), new PriceBreak(1, 90))), "[1] comes after [1]");
        assertFault(quote(1, 1, List.of(new PriceBreak(1, 0))), "above zero");
    }

    private static void assertFault(Quote quote, String words) {
        assertThatThrownBy(() -> KNOWN.decide(new SupplierCommand.NoteQuote(HOLM, quote, WHO, WHEN)))
                .isInstanceOf(SupplierRefused.QuoteDoesNotFit.class)
                .hasMessageContaining(words);
    }

    @Test
    void quotes_are_numbered_and_withdrawn_once_for_a_reason() {
        Supplier twice = after(after(KNOWN, TAPE), TAPE);
        assertThat(twice.quotes()).isEqualTo(2);
        var withdraw = new SupplierCommand.WithdrawQuote(HOLM, 2, "adhesive changed", WHO, WHEN);
        var events = twice.decide(withdraw);
        assertThat(events).hasSize(1);
        Supplier now = twice.evolve(events.getFirst());
        assertThat(now.decide(withdraw)).isEmpty();
        assertThatThrownBy(() -> now.decide(new SupplierCommand.WithdrawQuote(HOLM, 3, "x", WHO, WHEN)))
                .isInstanceOf(SupplierRefused.QuoteUnknown.class);
        assertThatThrownBy(() -> now.decide(new SupplierCommand.WithdrawQuote(HOLM, 1, " ", WHO, WHEN)))
                .isInstanceOf(SupplierRefused.WithdrawalWithoutReason.class);
    }

    private static Supplier after(Supplier supplier, Quote quote) {
        return supplier.evolve(supplier.decide(new SupplierCommand.NoteQuote(HOLM, quote, WHO, WHEN))
                .getFirst());
    }

    @Test
    void an_identity_is_given_once_and_a_name_is_needed() {
        assertThatThrownBy(() -> KNOWN.decide(new SupplierCommand.Register(HOLM, "Other", WHO, WHEN)))
                .isInstanceOf(SupplierRefused.SupplierKnownAlready.class);
        assertThatThrownBy(() -> Supplier.UNKNOWN.decide(new SupplierCommand.Register(HOLM, " ", WHO, WHEN)))
                .isInstanceOf(SupplierRefused.SupplierWithoutName.class);
        assertThatThrownBy(() -> Supplier.UNKNOWN.decide(new SupplierCommand.NoteQuote(HOLM, TAPE, WHO, WHEN)))
                .isInstanceOf(SupplierRefused.SupplierUnknown.class);
    }
}
