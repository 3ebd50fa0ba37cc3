package org.bandtrail.siteinstalls.cutsheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutplans.CutPlanView;
import org.bandtrail.siteinstalls.cutplans.CutUse;
import org.bandtrail.siteinstalls.cutplans.MaterialCuts;
import org.bandtrail.siteinstalls.cutplans.PlannedPiece;
import org.bandtrail.siteinstalls.cutplans.PlannedReel;
import org.bandtrail.siteinstalls.cutplans.PlannedTree;
import org.junit.jupiter.api.Test;

/** The sheet and the labels say which piece is how long and comes off which reel. */
class CutSheetPdfTest {

    /** Trees of 1,000 mm with two bands each, all from one reel, except one piece that is not cut. */
    private static CutPlanView.Whole plan(int trees) {
        List<PlannedTree> planned = IntStream.rangeClosed(1, trees)
                .mapToObj(number -> new PlannedTree(
                        new TreeId("ALDER-" + number), new SiteId("ALDER"), "T" + number, Length.ofMm(1_000), 2, 14, 0))
                .toList();
        List<PlannedPiece> pieces = planned.stream()
                .flatMap(tree -> IntStream.of(1, 2)
                        .mapToObj(position -> new PlannedPiece(tree.treeId(), position, Length.ofMm(1_092))))
                .toList();
        List<PlannedPiece> cut = pieces.subList(0, pieces.size() - 1);
        PlannedReel reel = new PlannedReel(
                new ReelId("R-0004"),
                "A-03",
                true,
                Length.ofMm(1_092L * cut.size() + 200),
                cut,
                Length.ZERO,
                Length.ofMm(200),
                Length.ZERO);
        MaterialCuts tape = new MaterialCuts(
                new MaterialCode("TAPE-127"),
                MaterialKind.TAPE,
                Length.ofMm(570),
                List.of(reel),
                List.of(pieces.getLast()),
                List.of(),
                new MaterialCuts.ToBuy(1, Length.ofMm(50_000), 0, Length.ZERO),
                new MaterialCuts.Quality(Length.ofMm(200), Length.ofMm(200), 0, true, true, false));
        CutPlanView row = new CutPlanView(
                "CP-1",
                "NORTH",
                LocalDate.of(2026, 5, 6),
                "agreed",
                trees,
                cut.size(),
                1,
                200,
                200,
                true,
                "P-01",
                Instant.EPOCH,
                null,
                null,
                null,
                null);
        return new CutPlanView.Whole(
                row,
                new CutPlanView.Parts("IMPERIAL", new CutUse("sticky-band", null, null), 1, planned, List.of(tape)));
    }

    private static String text(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static int pages(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void the_sheet_names_reel_bin_pieces_and_what_is_not_cut() throws IOException {
        assertThat(text(new CutSheetPdf(SheetUnits.SI).of(plan(2))))
                .contains("Depot NORTH, for Wednesday 6 May 2026. 3 pieces for 2 trees. The plan is agreed.")
                .contains("R-0004 (bin A-03, 3,476 mm on it): 3 pieces; nothing goes back")
                .contains("Not cut, the reels do not suffice: 1,092 mm for ALDER-2")
                .contains("gloves and eye protection");
    }

    // 1,092 mm = 42.99 in, which the measuring tape shows as 43 in = 3 ft 7 in; by hand.
    @Test
    void in_us_units_lengths_are_feet_and_inches() throws IOException {
        assertThat(text(new CutSheetPdf(SheetUnits.US).of(plan(1))))
                .contains("3 ft 7 in")
                .doesNotContain(" mm");
    }

    @Test
    void a_long_walk_goes_on_over_pages_and_loses_no_tree() throws IOException {
        byte[] file = new CutSheetPdf(SheetUnits.SI).of(plan(120));
        assertThat(pages(file)).isGreaterThan(4);
        assertThat(text(file).lines().filter(line -> line.startsWith("ALDER-"))).hasSizeGreaterThanOrEqualTo(240);
    }

    @Test
    void every_band_has_a_label_and_a_begun_sheet_is_used_up_first() throws IOException {
        TreeLabelsPdf labels = new TreeLabelsPdf(SheetUnits.SI);
        assertThat(pages(labels.of(plan(12), 1))).isEqualTo(1);
        assertThat(pages(labels.of(plan(12), 2))).isEqualTo(2);
        assertThat(text(labels.of(plan(2), 1)))
                .contains("ALDER-1", "band 2 of 2, 1 is the lowest", "TAPE-127 1,092 mm", "TAPE-127 not cut");
        assertThatThrownBy(() -> labels.of(plan(1), 25)).hasMessageContaining("labels 1 to 24, there is no [25]");
    }
}
