package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.testing.Histories;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BandLawTest {
    private static final int RUNS = 10_000;

    private static BandCommand anyFact(RandomGenerator random) {
        Instant happened = BandSamples.NOON.plus(Duration.ofMinutes(random.nextInt(1_000_000)));
        return switch (random.nextInt(3)) {
            case 0 -> BandSamples.fit(BandSamples.FITTING, BandSamples.BOOKS, happened);
            case 1 -> BandSamples.replaceTape("R-" + random.nextInt(50), happened);
            default -> BandSamples.takeDown(happened);
        };
    }

    private static Occurred when(BandCommand command) {
        return switch (command) {
            case BandCommand.FitBand fit -> fit.when();
            case BandCommand.NoteReplacement note -> note.when();
            case BandCommand.NoteTakenDown note -> note.when();
        };
    }

    @Test
    void facts_are_never_refused_and_their_order_of_arrival_does_not_matter() {
        long facts = Histories.check(RUNS, 1, 8, BandLawTest::anyFact, history -> {
            List<BandCommand> inOrder = new ArrayList<>(history);
            inOrder.sort(Comparator.comparing(command -> when(command).happened()));
            long moments = inOrder.stream()
                    .map(command -> when(command).happened())
                    .distinct()
                    .count();
            if (moments == inOrder.size()) {
                Band asTold = BandSamples.after(history.toArray(BandCommand[]::new));
                Band asHappened = BandSamples.after(inOrder.toArray(BandCommand[]::new));
                assertThat(asTold).isEqualTo(asHappened);
            }
        });
        assertThat(facts).isGreaterThan(RUNS);
    }

    @Test
    void a_band_hangs_exactly_if_nothing_took_it_down_after_it_was_last_fitted() {
        Histories.check(RUNS, 7, 8, BandLawTest::anyFact, history -> {
            @Nullable Instant fitted = null;
            @Nullable Instant down = null;
            for (BandCommand command : history) {
                Instant happened = when(command).happened();
                if (command instanceof BandCommand.FitBand && (fitted == null || happened.isAfter(fitted))) {
                    fitted = happened;
                }
                if (command instanceof BandCommand.NoteTakenDown && (down == null || happened.isAfter(down))) {
                    down = happened;
                }
            }
            boolean hangs = down == null || (fitted != null && fitted.compareTo(down) > 0);
            assertThat(BandSamples.after(history.toArray(BandCommand[]::new)).up())
                    .isEqualTo(hangs);
        });
    }
}
