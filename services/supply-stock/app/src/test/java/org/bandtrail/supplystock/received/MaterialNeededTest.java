package org.bandtrail.supplystock.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.needs.PlannedNeed;
import org.bandtrail.supplystock.needs.PlannedNeeds;
import org.bandtrail.testing.GoldenFile;
import org.bandtrail.testing.GoldenFiles;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a plan told is known, its last word counts, in whatever order and however often its words come. */
@OnPostgres
class MaterialNeededTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 11);
    private static final DepotId DEPOT = new DepotId("MN-D");

    @Autowired
    FromSiteInstalls from;

    @Autowired
    PlannedNeeds needs;

    @Test
    void the_samples_are_understood_and_calling_off_leaves_nothing() {
        hear("site-installs.material-needed.v1.1.json");
        hear("site-installs.material-needed.v1.1.json");
        assertThat(of("2026-05-11-C-2"))
                .containsExactlyInAnyOrder(
                        new PlannedNeed(
                                "2026-05-11-C-2",
                                new MaterialCode("TAPE-127"),
                                MaterialKind.TAPE,
                                new DepotId("NORTH"),
                                DAY,
                                DAY.plusDays(1),
                                2860,
                                1640),
                        new PlannedNeed(
                                "2026-05-11-C-2",
                                new MaterialCode("PIN-15"),
                                MaterialKind.FASTENER,
                                new DepotId("NORTH"),
                                DAY,
                                DAY.plusDays(1),
                                21,
                                0));

        hear("site-installs.material-needed.v1.2.json");
        assertThat(of("2026-05-11-C-2")).isEmpty();
        hear("site-installs.material-needed.v1.1.json");
        assertThat(of("2026-05-11-C-2")).as("an older word comes late").isEmpty();
    }

    @Test
    void whatever_the_order_of_the_words_the_last_one_counts() {
        Random chance = new Random(20_261_125);
        for (int run = 0; run < 50; run++) {
            String plan = "MN-" + run;
            List<Long> words = new ArrayList<>();
            for (long word = 1; word <= 1 + chance.nextInt(6); word++) {
                words.add(word);
                words.add(word);
            }
            long last = words.getLast();
            Collections.shuffle(words, chance);
            words.forEach(word -> needs.replace(plan, word, List.of(need(plan, word))));

            assertThat(of(plan)).as("plan %s after %s", plan, words).containsExactly(need(plan, last));
        }
    }

    @Test
    void two_lines_of_one_material_are_added_up() {
        needs.replace("MN-TWO", 1, List.of(need("MN-TWO", 5), need("MN-TWO", 7)));
        assertThat(of("MN-TWO")).extracting(PlannedNeed::quantity).containsExactly(12L);
    }

    private static PlannedNeed need(String plan, long quantity) {
        return new PlannedNeed(plan, new MaterialCode("MN-T"), MaterialKind.TAPE, DEPOT, DAY, DAY, quantity, quantity);
    }

    private List<PlannedNeed> of(String plan) {
        return needs.all().stream().filter(need -> need.planId().equals(plan)).toList();
    }

    private void hear(String sample) {
        GoldenFile file = GoldenFiles.in("samples").named(sample).orElseThrow();
        from.handle(new Envelope(
                "E-1",
                "/bandtrail/site-installs",
                file.storedName(),
                "plan/2026-05-11-C-2",
                Instant.parse("2026-05-04T14:00:00Z"),
                file.json()));
    }
}
