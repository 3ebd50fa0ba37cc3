package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.siteinstalls.bands.BandSamples.ALDER;
import static org.bandtrail.siteinstalls.bands.BandSamples.BOOKS;
import static org.bandtrail.siteinstalls.bands.BandSamples.FITTING;
import static org.bandtrail.siteinstalls.bands.BandSamples.MESH;
import static org.bandtrail.siteinstalls.bands.BandSamples.NOON;
import static org.bandtrail.siteinstalls.bands.BandSamples.TAPE;

import java.time.Duration;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceId;
import org.bandtrail.siteinstalls.policies.PolicySamples;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BandCheckTest {
    private static final Occurred NOW = Occurred.at(NOON);

    private static Fitting fitting(
            @Nullable String girth, @Nullable String height, String tape, @Nullable String mesh) {
        return new Fitting(
                FITTING.bandId(),
                FITTING.treeId(),
                FITTING.siteId(),
                FITTING.crewId(),
                FITTING.personId(),
                girth == null ? null : WrittenGirth.ofGirth(girth),
                height == null ? null : Length.parse(height),
                new Piece(TAPE, Length.parse(tape)),
                mesh == null ? null : new Piece(MESH, Length.parse(mesh)),
                FITTING.fasteners());
    }

    private static Books books(
            Books.@Nullable RegisteredTree tree, @Nullable KnownReel tape, @Nullable KnownReel mesh) {
        return new Books(true, tree, List.of(), null, tape, mesh, PolicySamples.VERSION_1, BandSamples.STICKY);
    }

    private static KnownReel reel(ReelId reel, MaterialKind kind, long width, @Nullable Long opening) {
        return new KnownReel(
                reel,
                new MaterialCode("ITEM"),
                kind,
                Length.ofMm(width),
                opening == null ? null : Length.ofMm(opening));
    }

    private static List<String> codes(Fitting fitting, Books books) {
        return BandCheck.findings(fitting, books, NOW).stream()
                .map(Finding::code)
                .toList();
    }

    private static List<String> codes(String girth, String tape, @Nullable String mesh) {
        return codes(fitting(girth, null, tape, mesh), BOOKS);
    }

    @Test
    void a_tree_or_site_nobody_registered_is_flagged() {
        Books nothing = new Books(
                false, null, List.of(), null, BOOKS.tapeReel(), BOOKS.meshReel(), BOOKS.policy(), BOOKS.device());
        assertThat(codes(FITTING, nothing)).containsExactly("site-unknown", "tree-unknown");
    }

    @Test
    void a_tree_the_register_has_elsewhere_is_flagged_with_that_site() {
        Books elsewhere = books(
                new Books.RegisteredTree(new SiteId("BIRCH"), Length.ofMm(1230)), BOOKS.tapeReel(), BOOKS.meshReel());
        assertThat(BandCheck.findings(FITTING, elsewhere, NOW)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("site-differs");
            assertThat(finding.perhaps()).isEqualTo("BIRCH");
        });
    }

    @Test
    void a_tree_that_has_a_band_already_is_flagged() {
        Books banded = new Books(
                true,
                BOOKS.tree(),
                List.of(new BandId("B-0099")),
                null,
                BOOKS.tapeReel(),
                BOOKS.meshReel(),
                BOOKS.policy(),
                BOOKS.device());
        assertThat(BandCheck.findings(FITTING, banded, NOW)).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("tree-already-banded");
            assertThat(finding.message()).contains("B-0099");
        });
    }

    @Test
    void feet_for_inches_are_asked_before_the_fact_is_stored() {
        Books unmeasured = books(new Books.RegisteredTree(ALDER, null), BOOKS.tapeReel(), BOOKS.meshReel());
        List<Finding> questions = BandCheck.questions(fitting("78 ft", null, "81.5 in", "87 in"), unmeasured, NOW);
        assertThat(questions)
                .filteredOn(finding -> finding.code().equals("girth-implausible"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.field()).isEqualTo("girth");
                    assertThat(finding.value()).isEqualTo("78 ft");
                    assertThat(finding.perhaps()).isEqualTo("78 in as girth");
                });
    }

    @Test
    void a_girth_nobody_knows_is_flagged() {
        Books unmeasured = books(new Books.RegisteredTree(ALDER, null), BOOKS.tapeReel(), BOOKS.meshReel());
        assertThat(codes(fitting(null, null, "1325 mm", "1465 mm"), unmeasured)).containsExactly("girth-missing");
    }

    @Test
    void a_thin_trunk_is_flagged() {
        Books thin = books(new Books.RegisteredTree(ALDER, Length.ofMm(478)), BOOKS.tapeReel(), BOOKS.meshReel());
        assertThat(codes(fitting("478 mm", null, "570 mm", "710 mm"), thin)).containsExactly("girth-below-minimum");
        assertThat(codes(fitting("479 mm", null, "570 mm", "710 mm"), thin)).isEmpty();
    }

    @Test
    void an_unusual_height_is_flagged_beyond_the_policy_and_not_at_it() {
        assertThat(codes(fitting("1234 mm", "1501 mm", "1325 mm", "1465 mm"), BOOKS))
                .containsExactly("height-unusual");
        assertThat(codes(fitting("1234 mm", "1500 mm", "1325 mm", "1465 mm"), BOOKS))
                .isEmpty();
        assertThat(codes(fitting("1234 mm", "899 mm", "1325 mm", "1465 mm"), BOOKS))
                .containsExactly("height-unusual");
    }

    @Test
    void tape_that_does_not_reach_round_or_is_far_too_long_is_flagged() {
        assertThat(codes("1234 mm", "1233 mm", "1465 mm")).containsExactly("tape-too-short");
        assertThat(codes("1234 mm", "1234 mm", "1465 mm")).containsExactly("deviation-unexplained");
        // proposed 1325 mm, a quarter more is 1656.25 mm
        assertThat(codes("1234 mm", "1657 mm", "1465 mm")).containsExactly("tape-unlikely");
        assertThat(codes("1234 mm", "1656 mm", "1465 mm")).containsExactly("deviation-unexplained");
    }

    @Test
    void a_piece_that_differs_by_more_than_its_ends_give_is_asked_about_until_a_reason_is_given() {
        // proposed 1325 mm with an overlap of 50 mm, and 1465 mm of mesh with 229 mm extra, half of it 114 mm
        assertThat(codes("1234 mm", "1375 mm", "1465 mm")).isEmpty();
        assertThat(codes("1234 mm", "1376 mm", "1465 mm")).containsExactly("deviation-unexplained");
        assertThat(codes("1234 mm", "1275 mm", "1579 mm")).isEmpty();
        Fitting longMesh = fitting("1234 mm", null, "1325 mm", "1580 mm");
        assertThat(BandCheck.questions(longMesh, BOOKS, NOW)).singleElement().satisfies(finding -> {
            assertThat(finding.field()).isEqualTo("deviation");
            assertThat(finding.message()).startsWith("1580 mm of mesh is 115 mm longer than proposed.");
        });
        FitDetails explained = new FitDetails(
                FitDetails.STICKY_BAND,
                1,
                "burl on the east side",
                List.of(),
                null,
                null,
                null,
                null,
                List.of(),
                List.of());
        assertThat(codes(longMesh.with(explained), BOOKS)).isEmpty();
        Fitting reused = new Fitting(
                longMesh.bandId(),
                longMesh.treeId(),
                longMesh.siteId(),
                longMesh.crewId(),
                longMesh.personId(),
                longMesh.girth(),
                longMesh.height(),
                longMesh.tape(),
                longMesh.mesh(),
                longMesh.fasteners(),
                longMesh.details(),
                new MeshPieceId("MP-1"));
        assertThat(codes(reused, BOOKS)).containsExactly("mesh-piece-unknown");
    }

    @Test
    void a_guard_that_is_missing_too_close_or_far_too_long_is_flagged() {
        assertThat(codes("1234 mm", "1325 mm", null)).containsExactly("guard-missing");
        // By hand: 24.5 x 2 pi = 153.94, so 154 mm of spare length round to 25 mm and 153 mm to 24 mm.
        assertThat(codes("1234 mm", "1325 mm", "1387 mm")).containsExactly("guard-too-close");
        assertThat(codes("1234 mm", "1325 mm", "1388 mm")).isEmpty();
        assertThat(codes("1234 mm", "1325 mm", "14.65 m")).containsExactly("mesh-unlikely");
    }

    @Test
    void reels_nobody_told_of_or_of_the_wrong_kind_are_flagged() {
        assertThat(codes(FITTING, books(BOOKS.tree(), null, null)))
                .containsExactly("tape-reel-unknown", "mesh-reel-unknown");
        KnownReel meshForTape = reel(TAPE, MaterialKind.MESH, 300, 13L);
        KnownReel tapeForMesh = reel(MESH, MaterialKind.TAPE, 100, null);
        assertThat(codes(FITTING, books(BOOKS.tree(), meshForTape, tapeForMesh)))
                .containsExactly("tape-reel-wrong-kind", "mesh-reel-wrong-kind");
    }

    @Test
    void wide_tape_wide_openings_and_narrow_guards_are_flagged_one_millimetre_beyond_the_policy() {
        KnownReel tape = reel(TAPE, MaterialKind.TAPE, 127, null);
        KnownReel mesh = reel(MESH, MaterialKind.MESH, 128, 13L);
        assertThat(codes(FITTING, books(BOOKS.tree(), tape, mesh))).isEmpty();
        assertThat(codes(FITTING, books(BOOKS.tree(), reel(TAPE, MaterialKind.TAPE, 128, null), mesh)))
                .containsExactly("guard-too-narrow", "tape-too-wide");
        assertThat(codes(FITTING, books(BOOKS.tree(), tape, reel(MESH, MaterialKind.MESH, 300, 14L))))
                .containsExactly("guard-opening-too-wide");
    }

    @Test
    void a_fact_recorded_days_late_or_by_a_fast_clock_is_flagged() {
        Occurred twoDays = new Occurred(NOON, NOON.plus(Duration.ofDays(2)));
        Occurred longer = new Occurred(NOON, NOON.plus(Duration.ofDays(2)).plusSeconds(1));
        Occurred ahead = new Occurred(NOON, NOON.minus(Duration.ofMinutes(11)));
        assertThat(BandCheck.findings(FITTING, BOOKS, twoDays)).isEmpty();
        assertThat(BandCheck.findings(FITTING, BOOKS, longer))
                .extracting(Finding::code)
                .containsExactly("recorded-late");
        assertThat(BandCheck.questions(FITTING, BOOKS, longer)).isEmpty();
        assertThat(BandCheck.questions(FITTING, BOOKS, ahead))
                .extracting(Finding::code)
                .containsExactly("clock-ahead");
    }
}
