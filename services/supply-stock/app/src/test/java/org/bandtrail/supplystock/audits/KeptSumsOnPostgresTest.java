package org.bandtrail.supplystock.audits;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The sums that are kept page by page are those of the rows, and the audit notices when they are not. */
@OnPostgres
class KeptSumsOnPostgresTest {
    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Autowired
    Auditor auditor;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    @Test
    void after_a_season_at_random_every_kept_sum_is_that_of_its_rows_and_so_it_is_after_a_rebuild() {
        RandomBooks season = new RandomBooks(work, commands, 20_260_504);
        assertThat(season.steps(150)).isGreaterThan(60);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        assertThat(season.steps(150)).isGreaterThan(120);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();

        Audit counted = recount();
        assertThat(differing(counted)).isEmpty();
        assertThat(counted.zero()).isTrue();
        Audit.Recounted recounted = Objects.requireNonNull(counted.recount());
        assertThat(recounted.moves()).isGreaterThan(150);
        assertThat(recounted.sums())
                .extracting(Audit.Line::name)
                .contains(
                        "Reels, moved TAPE: crew>tree",
                        "Reels, charges JPY: site",
                        "Batches, balance FASTENER: received");
        Audit kept = auditor.audit(Instant.EPOCH, false, List.of());
        assertThat(kept.laws()).isEqualTo(counted.laws());
        assertThat(kept.recount()).isNull();

        projectors.rebuild("reel-balance");
        projectors.rebuild("batch-balance");
        assertThat(auditor.audit(Instant.EPOCH, true, List.of())).isEqualTo(counted);
    }

    @Test
    void a_move_that_is_lost_a_balance_that_is_changed_and_a_place_that_is_forgotten_are_each_noticed() {
        new RandomBooks(work, commands, 7).steps(120);
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();

        assertThat(differing(after("DELETE FROM reel_history WHERE target LIKE 'tree:%'")))
                .anyMatch(line -> line.startsWith("Tape: on trees"))
                .anyMatch(line -> line.contains("moved TAPE: crew>tree"));
        assertThat(differing(after("UPDATE reel_balance SET charged_minor = charged_minor + 1 WHERE kind = 'TAPE'")))
                .contains("Money in USD: charged to sites");
        assertThat(differing(after("DELETE FROM reel_at_place WHERE place LIKE 'tree:%' AND quantity <> 0")))
                .isNotEmpty()
                .allMatch(line -> line.startsWith("Reels, by place"));
        assertThat(
                        differing(
                                after(
                                        "UPDATE reel_at_place SET place = 'tree:NOWHERE' WHERE place = 'tree:RN-T1' AND kind = 'TAPE'")))
                .as("the same sum at another place")
                .containsExactly("Reels, by place TAPE: places");
        assertThat(differing(recount())).as("nothing of it stayed").isEmpty();
    }

    private Audit recount() {
        return auditor.audit(Instant.EPOCH, true, List.of());
    }

    /** What the audit finds after this damage, which is taken back. */
    private Audit after(String damage) {
        return Objects.requireNonNull(new TransactionTemplate(transactions).execute(status -> {
            status.setRollbackOnly();
            assertThat(jdbc.sql(damage).update()).isPositive();
            return recount();
        }));
    }

    private static List<String> differing(Audit audit) {
        List<Audit.Line> lines = new java.util.ArrayList<>(audit.laws());
        lines.addAll(Objects.requireNonNull(audit.recount()).sums());
        return lines.stream()
                .filter(line -> line.difference() != 0)
                .map(Audit.Line::name)
                .toList();
    }
}
