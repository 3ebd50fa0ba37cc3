package org.bandtrail.supplystock.periods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class PeriodTest {
    private static final YearMonth APRIL = YearMonth.of(2026, 4);
    private static final YearMonth MAY = YearMonth.of(2026, 5);
    private static final YearMonth JUNE = YearMonth.of(2026, 6);
    private static final PersonId ANNA = new PersonId("P-30");
    private static final PersonId BELA = new PersonId("P-31");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-06-02T08:00:00Z"));
    private static final CheckFound AUDIT = new CheckFound("audit", 0, "Every law holds.", "");
    private static final CheckFound ONE_OPEN = new CheckFound("open-discrepancies", 1, "One is open.", "R-1");

    @Test
    void a_month_that_has_ended_is_closed_when_every_check_is_clean() {
        Period closed = Period.NEVER_CLOSED.evolve(
                Period.NEVER_CLOSED.decide(close(MAY, JUNE, AUDIT)).getFirst());

        assertThat(closed.closed(MAY)).isTrue();
        assertThat(closed.closed(APRIL))
                .as("the first close takes everything before it")
                .isTrue();
        assertThat(closed.closed(JUNE)).isFalse();
    }

    @Test
    void the_running_month_is_not_closed() {
        assertThatExceptionOfType(PeriodRefused.MonthNotOver.class)
                .isThrownBy(() -> Period.NEVER_CLOSED.decide(close(JUNE, JUNE, AUDIT)))
                .withMessageContaining("Month [2026-06] has not ended");
    }

    @Test
    void a_gap_is_refused_and_names_the_month_to_close_first() {
        Period throughApril = after(close(APRIL, JUNE, AUDIT));

        assertThatExceptionOfType(PeriodRefused.MonthOutOfOrder.class)
                .isThrownBy(() -> throughApril.decide(close(JUNE, YearMonth.of(2026, 8), AUDIT)))
                .withMessageContaining("Close [2026-05] first");
        assertThatExceptionOfType(PeriodRefused.MonthClosedAlready.class)
                .isThrownBy(() -> throughApril.decide(close(APRIL, JUNE, AUDIT)));
    }

    @Test
    void an_open_check_must_be_signed_and_the_signature_stays_with_the_close() {
        assertThatExceptionOfType(PeriodRefused.ChecksOpen.class)
                .isThrownBy(() -> Period.NEVER_CLOSED.decide(close(MAY, JUNE, AUDIT, ONE_OPEN)))
                .withMessageContaining("[open-discrepancies]: One is open.");

        Period signed = after(sign(MAY, ONE_OPEN, "being looked for"));
        var event = (PeriodEvent.Closed)
                signed.decide(close(MAY, JUNE, AUDIT, ONE_OPEN)).getFirst();
        assertThat(event.checks())
                .containsExactly(
                        new CheckPassed(AUDIT, null, null), new CheckPassed(ONE_OPEN, ANNA, "being looked for"));
    }

    @Test
    void a_signature_holds_for_what_was_seen_and_for_nothing_that_came_later() {
        Period signed = after(sign(MAY, ONE_OPEN, "being looked for"));
        CheckFound another = new CheckFound("open-discrepancies", 1, "One is open.", "R-2");

        assertThatExceptionOfType(PeriodRefused.ChecksOpen.class)
                .isThrownBy(() -> signed.decide(close(MAY, JUNE, another)));
    }

    @Test
    void a_clean_check_is_not_signed_and_no_reason_is_no_signature() {
        assertThatExceptionOfType(PeriodRefused.CheckCleanAlready.class)
                .isThrownBy(() -> Period.NEVER_CLOSED.decide(sign(MAY, AUDIT, "why not")));
        assertThatExceptionOfType(PeriodRefused.ReasonMissing.class)
                .isThrownBy(() -> Period.NEVER_CLOSED.decide(sign(MAY, ONE_OPEN, "  ")));
    }

    @Test
    void reopening_needs_a_reason_and_a_second_person() {
        Period closed = after(close(APRIL, JUNE, AUDIT), close(MAY, JUNE, AUDIT));
        assertThatExceptionOfType(PeriodRefused.NobodyAskedToReopen.class)
                .isThrownBy(() -> closed.decide(new PeriodCommand.Reopen(BooksId.MAIN, MAY, BELA, NOW)));
        assertThatExceptionOfType(PeriodRefused.ReasonMissing.class).isThrownBy(() -> closed.decide(ask(MAY, " ")));

        Period asked = closed.evolve(closed.decide(ask(MAY, "wrong delivery")).getFirst());
        assertThatExceptionOfType(PeriodRefused.SecondPersonNeeded.class)
                .isThrownBy(() -> asked.decide(new PeriodCommand.Reopen(BooksId.MAIN, MAY, ANNA, NOW)))
                .withMessageContaining("another person has to grant it");

        var reopened = (PeriodEvent.Reopened) asked.decide(new PeriodCommand.Reopen(BooksId.MAIN, MAY, BELA, NOW))
                .getFirst();
        assertThat(reopened.askedBy()).isEqualTo(ANNA);
        assertThat(reopened.closedThrough()).isEqualTo(APRIL);
        assertThat(asked.evolve(reopened).closedThrough()).isEqualTo(APRIL);
    }

    @Test
    void only_the_last_closed_month_is_reopened() {
        Period closed = after(close(APRIL, JUNE, AUDIT), close(MAY, JUNE, AUDIT));

        assertThatExceptionOfType(PeriodRefused.NotTheLastClosed.class)
                .isThrownBy(() -> closed.decide(ask(APRIL, "why")))
                .withMessageContaining("only the last closed one can, which is [2026-05]");
    }

    @Test
    void what_was_signed_for_the_first_close_is_signed_again_for_the_second() {
        Period again = after(
                sign(MAY, ONE_OPEN, "being looked for"),
                close(MAY, JUNE, ONE_OPEN),
                ask(MAY, "wrong delivery"),
                new PeriodCommand.Reopen(BooksId.MAIN, MAY, BELA, NOW));

        assertThat(again.closedThrough()).isNull();
        assertThatExceptionOfType(PeriodRefused.ChecksOpen.class)
                .isThrownBy(() -> again.decide(close(MAY, JUNE, ONE_OPEN)));
    }

    @Test
    void a_request_can_be_dropped_and_asked_again() {
        Period dropped = after(
                close(MAY, JUNE, AUDIT),
                ask(MAY, "wrong delivery"),
                new PeriodCommand.DropReopening(BooksId.MAIN, MAY, "June will do", BELA, NOW));

        assertThat(dropped.asked()).isNull();
        assertThat(dropped.decide(ask(MAY, "wrong after all"))).hasSize(1);
    }

    @Test
    void a_late_fact_posts_to_the_earliest_open_month_and_a_timely_one_to_its_own() {
        Instant lateInMay = Instant.parse("2026-05-31T23:59:59Z");

        assertThat(Period.postsTo(lateInMay, null)).isEqualTo(MAY);
        assertThat(Period.postsTo(lateInMay, APRIL)).isEqualTo(MAY);
        assertThat(Period.postsTo(lateInMay, MAY)).isEqualTo(JUNE);
        assertThat(Period.postsTo(lateInMay.plusSeconds(1), APRIL)).isEqualTo(JUNE);
    }

    private static Period after(PeriodCommand... commands) {
        Period period = Period.NEVER_CLOSED;
        for (PeriodCommand command : commands) {
            for (PeriodEvent event : period.decide(command)) {
                period = period.evolve(event);
            }
        }
        return period;
    }

    private static PeriodCommand close(YearMonth month, YearMonth running, CheckFound... found) {
        return new PeriodCommand.Close(BooksId.MAIN, month, running, List.of(found), ANNA, NOW);
    }

    private static PeriodCommand sign(YearMonth month, CheckFound found, String reason) {
        return new PeriodCommand.SignCheck(BooksId.MAIN, month, found, reason, ANNA, NOW);
    }

    private static PeriodCommand ask(YearMonth month, String reason) {
        return new PeriodCommand.AskToReopen(BooksId.MAIN, month, reason, ANNA, NOW);
    }
}
