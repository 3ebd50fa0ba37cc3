package org.bandtrail.supplystock.budgets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.YearMonth;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.spend.Outcome;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private static final BudgetId MILL = new BudgetId("BU-MILL");
    private static final PersonId ANNA = new PersonId("P-30");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-06-02T08:00:00Z"));
    private static final YearMonth MAY = YearMonth.of(2026, 5);

    @Test
    void a_budget_is_set_once_for_months_in_their_order() {
        Budget set = set();

        assertThatExceptionOfType(BudgetRefused.BudgetKnown.class)
                .isThrownBy(() -> set.decide(plan("Mill", MAY, MAY, 1)));
        assertThatExceptionOfType(BudgetRefused.BudgetUnfit.class)
                .isThrownBy(() -> Budget.UNKNOWN.decide(plan("Mill", MAY, MAY.minusMonths(1), 1)))
                .withMessageContaining("the last month [2026-04]");
        assertThatExceptionOfType(BudgetRefused.BudgetUnfit.class)
                .isThrownBy(() -> Budget.UNKNOWN.decide(plan("Mill", MAY, MAY, 0)))
                .withMessageContaining("the amount [USD 0.00]");
        assertThatExceptionOfType(BudgetRefused.BudgetUnfit.class)
                .isThrownBy(() -> Budget.UNKNOWN.decide(plan(" ", MAY, MAY, 1)))
                .withMessageContaining("the name [ ]");
    }

    @Test
    void its_amount_changes_with_a_reason_and_in_the_same_currency() {
        Budget more = set().evolve(set().decide(change(Money.of(900, "USD"), " more trees "))
                .getFirst());

        assertThat(Objects.requireNonNull(more.plan()).amount()).isEqualTo(Money.of(900, "USD"));
        assertThatExceptionOfType(BudgetRefused.BudgetUnfit.class)
                .isThrownBy(() -> set().decide(change(Money.of(900, "USD"), " ")));
        assertThatExceptionOfType(BudgetRefused.BudgetUnfit.class)
                .isThrownBy(() -> set().decide(change(Money.of(900, "EUR"), "moved")))
                .withMessageContaining("It is in USD");
    }

    @Test
    void a_dropped_budget_changes_no_more() {
        Budget dropped = set().evolve(set().decide(new BudgetCommand.Drop(MILL, "given up", ANNA, NOW))
                .getFirst());

        assertThat(dropped.dropped()).isTrue();
        assertThatExceptionOfType(BudgetRefused.BudgetNotThere.class)
                .isThrownBy(() -> dropped.decide(change(Money.of(900, "USD"), "more")))
                .withMessageContaining("was dropped");
        assertThatExceptionOfType(BudgetRefused.BudgetNotThere.class)
                .isThrownBy(() -> Budget.UNKNOWN.decide(change(Money.of(900, "USD"), "more")));
    }

    private static BudgetStanding standing(Counts counts) {
        BudgetRow row =
                new BudgetRow("BU-MILL", "Mill", null, null, null, MAY, MAY, Money.of(1_000, "USD"), counts, null);
        return BudgetStanding.of(
                row,
                Map.of(Outcome.USED, 100L, Outcome.SCRAPPED, 20L, Outcome.MISSING, 7L, Outcome.WRITTEN_DOWN, 3L),
                50);
    }

    @Test
    void spent_is_what_the_budget_counts_and_the_four_stand_apart_either_way() {
        BudgetStanding all = standing(Counts.CHARGED_AND_LOST);
        BudgetStanding charged = standing(Counts.CHARGED);

        assertThat(all.actualMinor()).isEqualTo(130);
        assertThat(all.leftMinor()).isEqualTo(1_000 - 130 - 50);
        assertThat(charged.actualMinor()).isEqualTo(120);
        assertThat(charged.missingMinor() + charged.writtenDownMinor()).isEqualTo(10);
        assertThat(all.usedMinor() + all.scrappedMinor()).isEqualTo(120);
    }

    private static Budget set() {
        return Budget.UNKNOWN.evolve(
                Budget.UNKNOWN.decide(plan("Mill", MAY, MAY.plusMonths(4), 500)).getFirst());
    }

    private static BudgetCommand plan(String name, YearMonth from, YearMonth through, long minor) {
        return new BudgetCommand.SetUp(
                MILL,
                new BudgetPlan(name, null, null, null, from, through, Money.of(minor, "USD"), Counts.CHARGED_AND_LOST),
                ANNA,
                NOW);
    }

    private static BudgetCommand change(Money amount, String reason) {
        return new BudgetCommand.ChangeAmount(MILL, amount, reason, ANNA, NOW);
    }
}
