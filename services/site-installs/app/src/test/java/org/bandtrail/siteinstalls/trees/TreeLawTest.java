package org.bandtrail.siteinstalls.trees;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.trees.TreeCommand.CorrectTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeCorrected;
import org.bandtrail.testing.Histories;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TreeLawTest {
    private static final int RUNS = 10_000;
    private static final TreeId TREE = new TreeId("ALDER-17");
    private static final PersonId PERSON = new PersonId("P-07");
    private static final Instant SPRING = Instant.parse("2026-03-01T08:00:00Z");

    private static MeasureGirth anyMeasurement(RandomGenerator random) {
        Instant moment = SPRING.plus(Duration.ofMinutes(random.nextInt(1_000_000)));
        String girth = (300 + random.nextInt(3_000)) + " mm";
        return new MeasureGirth(TREE, WrittenGirth.ofGirth(girth), null, null, PERSON, Occurred.at(moment));
    }

    private static Tree after(List<MeasureGirth> measurements) {
        RegisterTree register = new RegisterTree(
                TREE, new SiteId("ALDER"), "17", "", null, null, null, null, "", PERSON, Occurred.at(SPRING));
        Tree tree = Tree.NONE.evolve(Tree.NONE.decide(register).getFirst());
        for (MeasureGirth measurement : measurements) {
            for (TreeEvent event : tree.decide(measurement)) {
                tree = tree.evolve(event);
            }
        }
        return tree;
    }

    @Test
    void corrections_are_a_chain_in_which_no_value_is_lost() {
        long corrections = Histories.check(RUNS, 4, 10, TreeLawTest::anyCorrection, history -> {
            Tree tree = after(List.of());
            TreeDetails said = Objects.requireNonNull(tree.details());
            for (CorrectTree correction : history) {
                if (correction.details().equals(said)) {
                    continue;
                }
                TreeCorrected event = (TreeCorrected) tree.decide(correction).getFirst();
                assertThat(event.before()).isEqualTo(said);
                assertThat(event.after().changesFrom(event.before())).isNotEmpty();
                tree = tree.evolve(event);
                said = event.after();
            }
            assertThat(tree.details()).isEqualTo(said);
        });
        assertThat(corrections).isGreaterThan(RUNS);
    }

    private static CorrectTree anyCorrection(RandomGenerator random) {
        @Nullable Point position = random.nextBoolean() ? null : new Point(random.nextInt(3), random.nextInt(3));
        @Nullable EppoCode code = random.nextBoolean() ? null : new EppoCode("AILAL");
        TreeDetails details = new TreeDetails(
                new SiteId("ALDER"),
                Integer.toString(17 + random.nextInt(2)),
                random.nextBoolean() ? "" : "sumac",
                code,
                position,
                "");
        return new CorrectTree(TREE, details, "looked again", PERSON, Occurred.at(SPRING));
    }

    @Test
    void the_girth_is_that_of_the_latest_moment_in_whatever_order_measurements_come_in() {
        long measured = Histories.check(RUNS, 3, 10, TreeLawTest::anyMeasurement, history -> {
            long moments = history.stream()
                    .map(measurement -> measurement.when().happened())
                    .distinct()
                    .count();
            List<MeasureGirth> inOrder = new ArrayList<>(history);
            inOrder.sort(Comparator.comparing(measurement -> measurement.when().happened()));
            if (moments == history.size()) {
                assertThat(after(history)).isEqualTo(after(inOrder));
                assertThat(after(history).girth())
                        .isEqualTo(inOrder.getLast().girth().girth());
            }
        });
        assertThat(measured).isGreaterThan(RUNS);
    }
}
