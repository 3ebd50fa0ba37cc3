package org.bandtrail.siteinstalls.trees;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.testing.Histories;
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
