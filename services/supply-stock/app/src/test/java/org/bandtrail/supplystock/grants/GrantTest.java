package org.bandtrail.supplystock.grants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class GrantTest {
    private static final GrantId RIVER = new GrantId("g-river");
    private static final PersonId ANNA = new PersonId("P-30");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-06-02T08:00:00Z"));
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 12, 31);
    private static final GrantTerms TERMS = terms("River corridor", Money.of(5_000_000, "USD"), FIRST, LAST);

    @Test
    void a_grant_is_entered_once() {
        Grant known = Grant.UNKNOWN.evolve(Grant.UNKNOWN.decide(register(TERMS)).getFirst());

        assertThat(known.terms()).isEqualTo(TERMS);
        assertThatExceptionOfType(GrantRefused.GrantKnown.class)
                .isThrownBy(() -> known.decide(register(TERMS)))
                .withMessageContaining("Grant [G-RIVER] is entered already as River corridor");
    }

    @Test
    void terms_that_make_no_sense_are_refused_by_name() {
        refusedTerms(terms(" ", Money.of(1, "USD"), FIRST, LAST), "the name [ ]");
        refusedTerms(terms("River", Money.zero("USD"), FIRST, LAST), "the amount [USD 0.00]");
        refusedTerms(terms("River", Money.of(1, "USD"), LAST, FIRST), "the last day [2026-01-01]");
    }

    @Test
    void terms_change_with_a_reason_and_in_the_same_currency() {
        Grant known = new Grant(TERMS);
        GrantTerms more = terms("River corridor", Money.of(6_000_000, "USD"), FIRST, LAST);

        assertThat(known.decide(change(more, " by letter ")))
                .containsExactly(new GrantEvent.TermsChanged(RIVER, more, "by letter", ANNA, NOW));
        assertThatExceptionOfType(GrantRefused.GrantReasonMissing.class)
                .isThrownBy(() -> known.decide(change(more, " ")));
        assertThatExceptionOfType(GrantRefused.GrantCurrencyFixed.class)
                .isThrownBy(() -> known.decide(change(terms("River", Money.of(1, "EUR"), FIRST, LAST), "moved")));
        assertThatExceptionOfType(GrantRefused.GrantUnknown.class)
                .isThrownBy(() -> Grant.UNKNOWN.decide(change(more, "by letter")));
    }

    private static void refusedTerms(GrantTerms terms, String what) {
        assertThatExceptionOfType(GrantRefused.GrantTermsUnfit.class)
                .isThrownBy(() -> Grant.UNKNOWN.decide(register(terms)))
                .withMessageContaining(what);
    }

    private static GrantTerms terms(String name, Money amount, LocalDate from, LocalDate until) {
        return new GrantTerms(name, amount, from, until);
    }

    private static GrantCommand register(GrantTerms terms) {
        return new GrantCommand.Register(RIVER, terms, ANNA, NOW);
    }

    private static GrantCommand change(GrantTerms terms, String reason) {
        return new GrantCommand.ChangeTerms(RIVER, terms, reason, ANNA, NOW);
    }
}
