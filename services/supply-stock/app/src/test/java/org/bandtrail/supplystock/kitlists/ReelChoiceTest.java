package org.bandtrail.supplystock.kitlists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ReelChoiceTest {
    private static final DepotId DEPOT = new DepotId("NORTH");
    private static final LocalDate DAY = LocalDate.parse("2026-05-04");

    @Test
    void a_part_reel_goes_before_a_full_one_that_expires_sooner() {
        ReelChoice choice = ReelChoice.of(
                List.of(cut("T-1", 1, 1_000)),
                List.of(reel("R-1", 50_000, 50_000, "2026-06-01", 1), reel("R-2", 3_000, 50_000, "2027-06-01", 2)),
                DAY);

        assertThat(ids(choice)).containsExactly("R-2");
    }

    @Test
    void among_full_reels_the_oldest_expiry_goes_first_then_the_oldest_receipt_and_unknown_last() {
        List<ReelOnShelf> shelf = List.of(
                reel("R-1", 1_000, 1_000, null, 1),
                reel("R-2", 1_000, 1_000, "2027-01-01", 3),
                reel("R-3", 1_000, 1_000, "2026-12-01", 4),
                reel("R-4", 1_000, 1_000, "2027-01-01", 2));

        ReelChoice choice = ReelChoice.of(
                List.of(cut("T-1", 1, 900), cut("T-2", 1, 900), cut("T-3", 1, 900), cut("T-4", 1, 900)), shelf, DAY);

        assertThat(ids(choice)).containsExactly("R-3", "R-4", "R-2", "R-1");
    }

    @Test
    void a_reel_that_is_set_aside_expired_or_reserved_is_passed_over_with_the_reason() {
        ReelOnShelf aside = new ReelOnShelf(
                new ReelId("R-1"), Place.setAside(DEPOT), mm(9_000), mm(9_000), null, Instant.EPOCH, null);
        ReelOnShelf held = new ReelOnShelf(
                new ReelId("R-3"), Place.depot(DEPOT), mm(9_000), mm(9_000), null, Instant.EPOCH, new KitId("K-9"));

        ReelChoice choice = ReelChoice.of(
                List.of(cut("T-1", 1, 1_000)), List.of(aside, reel("R-2", 9_000, 9_000, "2026-05-03", 1), held), DAY);

        assertThat(choice.picks()).isEmpty();
        assertThat(choice.lacking()).containsExactly(cut("T-1", 1, 1_000));
        assertThat(choice.passedOver())
                .extracting(reel -> reel.reel() + ": " + reel.why())
                .containsExactlyInAnyOrder(
                        "R-1: set aside until somebody releases it",
                        "R-2: its adhesive was good until 2026-05-03",
                        "R-3: reserved for kit K-9");
    }

    @Test
    void adhesive_is_good_on_its_last_day() {
        ReelChoice choice =
                ReelChoice.of(List.of(cut("T-1", 1, 1_000)), List.of(reel("R-2", 9_000, 9_000, "2026-05-04", 1)), DAY);

        assertThat(ids(choice)).containsExactly("R-2");
    }

    @Test
    void a_wished_reel_is_taken_before_any_other_and_two_bands_may_come_from_two_reels() {
        List<ReelOnShelf> shelf = List.of(reel("R-1", 1_000, 9_000, null, 1), reel("R-2", 9_000, 9_000, null, 2));

        ReelChoice choice = ReelChoice.of(
                List.of(cut("T-1", 1, 900), cut("T-2", 2, 1_000)),
                List.of(wish("T-1", "R-2", null), wish("T-2", "R-1", 1), wish("T-2", "R-2", 1)),
                shelf,
                DAY);

        assertThat(choice.otherwise()).isEmpty();
        assertThat(choice.lacking()).isEmpty();
        assertThat(choice.picks())
                .extracting(pick -> pick.reel().reel() + " " + pick.cuts())
                .containsExactly(
                        "R-1 " + List.of(cut("T-2", 1, 1_000)),
                        "R-2 " + List.of(cut("T-1", 1, 900), cut("T-2", 1, 1_000)));
    }

    @Test
    void where_a_wished_reel_cannot_be_had_the_usual_choice_is_made_and_it_says_why() {
        ReelOnShelf held = new ReelOnShelf(
                new ReelId("R-3"), Place.depot(DEPOT), mm(9_000), mm(9_000), null, Instant.EPOCH, new KitId("K-9"));

        ReelChoice choice = ReelChoice.of(
                List.of(cut("T-1", 1, 900), cut("T-2", 1, 900), cut("T-3", 1, 900), cut("T-4", 2, 900)),
                List.of(
                        wish("T-1", "R-3", null),
                        wish("T-2", "R-7", null),
                        wish("T-3", "R-2", null),
                        wish("T-4", "R-1", 1)),
                List.of(reel("R-1", 9_000, 9_000, null, 1), reel("R-2", 800, 9_000, null, 2), held),
                DAY);

        assertThat(ids(choice)).containsExactly("R-1");
        assertThat(choice.lacking()).isEmpty();
        assertThat(choice.otherwise())
                .extracting(tree -> tree.tree() + ": " + tree.why())
                .containsExactly(
                        "T-1: reel R-3: reserved for kit K-9",
                        "T-2: reel R-7 is not there",
                        "T-3: reel R-2 has 0.800 m left for it, not 0.900 m",
                        "T-4: reels are wished for 1 of its 2 pieces");
    }

    @Test
    void a_reel_is_wished_for_tape_or_mesh_and_for_pieces_that_can_be() {
        assertThatThrownBy(() -> new WishedReel(new TreeId("T-1"), MaterialKind.FASTENER, new ReelId("R-1"), 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[T-1]");
        assertThatThrownBy(() -> wish("T-1", "R-1", 0)).hasMessageContaining("[0]");
    }

    @Test
    void all_pieces_of_a_tree_come_from_one_reel_even_if_two_rests_together_would_do() {
        List<ReelOnShelf> shelf = List.of(reel("R-1", 1_500, 9_000, null, 1), reel("R-2", 1_500, 9_000, null, 2));

        ReelChoice choice = ReelChoice.of(List.of(cut("T-1", 2, 1_000), cut("T-2", 1, 1_500)), shelf, DAY);

        assertThat(choice.lacking()).containsExactly(cut("T-1", 2, 1_000));
        assertThat(ids(choice)).containsExactly("R-1");
    }

    @Test
    void whatever_is_wanted_no_reel_gives_more_than_it_has_and_every_tree_is_cut_or_lacking() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(20_260_504);
        for (int run = 0; run < 2_000; run++) {
            List<ReelOnShelf> shelf = new ArrayList<>();
            for (int i = 0; i < random.nextInt(6); i++) {
                long there = 1 + random.nextInt(6_000);
                shelf.add(reel("R-" + i, there, there + random.nextInt(2), null, i));
            }
            List<Cut> wanted = new ArrayList<>();
            for (int i = 0; i < random.nextInt(8); i++) {
                wanted.add(cut("T-" + i, 1 + random.nextInt(2), 500 + random.nextInt(1_500)));
            }

            List<WishedReel> wishes = new ArrayList<>();
            wanted.stream()
                    .filter(cut -> random.nextBoolean())
                    .forEach(cut -> wishes.add(wish(cut.tree().value(), "R-" + random.nextInt(6), null)));

            ReelChoice choice = ReelChoice.of(wanted, wishes, shelf, DAY);

            assertThat(choice.picks())
                    .allMatch(pick -> pick.taken().compareTo(pick.reel().there()) <= 0);
            List<Cut> placed = new ArrayList<>(choice.lacking());
            choice.picks().forEach(pick -> placed.addAll(pick.cuts()));
            assertThat(placed).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    private static WishedReel wish(String tree, String reel, @Nullable Integer pieces) {
        return new WishedReel(new TreeId(tree), MaterialKind.TAPE, new ReelId(reel), pieces);
    }

    private static List<String> ids(ReelChoice choice) {
        return choice.picks().stream().map(pick -> pick.reel().reel().value()).toList();
    }

    private static ReelOnShelf reel(String id, long there, long bought, @Nullable String expires, int day) {
        return new ReelOnShelf(
                new ReelId(id),
                Place.bin(DEPOT, "A-01"),
                mm(there),
                mm(bought),
                expires == null ? null : LocalDate.parse(expires),
                Instant.EPOCH.plusSeconds(day),
                null);
    }

    private static Cut cut(String tree, int pieces, long each) {
        return new Cut(new TreeId(tree), pieces, mm(each));
    }

    private static Length mm(long mm) {
        return Length.ofMm(mm);
    }
}
