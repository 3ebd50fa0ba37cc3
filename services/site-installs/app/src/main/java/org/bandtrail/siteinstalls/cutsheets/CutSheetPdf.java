package org.bandtrail.siteinstalls.cutsheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.cutplans.CutPlanView;
import org.bandtrail.siteinstalls.cutplans.MaterialCuts;
import org.bandtrail.siteinstalls.cutplans.PlannedPiece;
import org.bandtrail.siteinstalls.cutplans.PlannedReel;
import org.bandtrail.siteinstalls.cutplans.PlannedTree;

/** The sheet people cut by: reels to scale, then the pieces in the order of the walk. */
final class CutSheetPdf {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private final SheetUnits units;

    CutSheetPdf(SheetUnits units) {
        this.units = units;
    }

    /** The sheet as a PDF file. */
    byte[] of(CutPlanView.Whole whole) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            try (Paper paper = new Paper(document, units.paper())) {
                write(whole, paper);
            }
            document.getDocumentInformation()
                    .setTitle("Cut plan " + whole.plan().planId());
            document.save(out);
            return out.toByteArray();
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }

    private void write(CutPlanView.Whole whole, Paper paper) throws IOException {
        CutPlanView plan = whole.plan();
        paper.heading("Cut plan " + plan.planId());
        paper.text("Depot %s, for %s. %d pieces for %d trees. The plan is %s."
                .formatted(plan.depotId(), DAY.format(plan.day()), plan.pieces(), plan.trees(), plan.state()));
        paper.text("Cut mesh has sharp edges: gloves and eye protection. Keep the adhesive off the skin.");
        for (MaterialCuts cuts : whole.parts().materials()) {
            paper.heading(cuts.material() + ", reel by reel");
            for (PlannedReel reel : cuts.reels()) {
                paper.bar(title(reel), stretches(reel));
            }
            missing(cuts, paper);
        }
        paper.heading("In the order of the walk");
        paper.text("Lengths are as the measuring tape shows them, rounded up. Tick each piece when it is cut.");
        walk(whole.parts(), paper);
    }

    private String title(PlannedReel reel) {
        String rest = reel.leftover().isPositive()
                ? "%s go back to the depot".formatted(units.words(reel.leftover()))
                : "nothing goes back";
        return "%s (%s, %s on it): %d pieces; %s"
                .formatted(
                        reel.reelId(),
                        reel.bin() == null ? "loose" : "bin " + reel.bin(),
                        units.words(reel.length()),
                        reel.pieces().size(),
                        rest);
    }

    /** To scale, except that a rest longer than all pieces is drawn as long as they are. */
    private List<Paper.Stretch> stretches(PlannedReel reel) {
        long lost = reel.scrap().plus(reel.blade()).mm();
        long rest = Math.min(reel.leftover().mm(), reel.piecesTogether().mm());
        double whole = reel.piecesTogether().mm() + lost + (double) rest;
        List<Paper.Stretch> stretches = new ArrayList<>();
        for (PlannedPiece piece : reel.pieces()) {
            stretches.add(new Paper.Stretch(
                    piece.length().mm() / whole, List.of(piece.treeId().value(), units.words(piece.length())), false));
        }
        if (rest > 0) {
            stretches.add(new Paper.Stretch(rest / whole, List.of("back", units.words(reel.leftover())), false));
        }
        if (lost > 0) {
            stretches.add(new Paper.Stretch(lost / whole, List.of("scrap", units.words(Length.ofMm(lost))), true));
        }
        return stretches;
    }

    private void missing(MaterialCuts cuts, Paper paper) throws IOException {
        for (PlannedPiece piece : cuts.uncut()) {
            paper.text("Not cut, the reels do not suffice: %s for %s"
                    .formatted(units.words(piece.length()), piece.treeId()));
        }
        for (PlannedPiece piece : cuts.tooLong()) {
            paper.text(
                    "Not cut, longer than any reel: %s for %s".formatted(units.words(piece.length()), piece.treeId()));
        }
    }

    private void walk(CutPlanView.Parts parts, Paper paper) throws IOException {
        List<String> header = new ArrayList<>(List.of("Tree", "girth", "band"));
        parts.materials().forEach(cuts -> {
            header.add(cuts.kind() == MaterialKind.TAPE ? "tape" : "mesh");
            header.add("from reel");
            header.add("cut");
        });
        header.add("pins");
        float[] widths = new float[header.size()];
        for (int column = 0; column < widths.length; column++) {
            widths[column] =
                    header.get(column).equals("Tree") || header.get(column).equals("from reel") ? 2f : 1.2f;
        }
        List<Map<String, Cut>> cuts =
                parts.materials().stream().map(CutSheetPdf::byKey).toList();
        List<List<String>> rows = new ArrayList<>();
        for (PlannedTree tree : parts.trees()) {
            for (int position = 1; position <= tree.bands(); position++) {
                rows.add(row(tree, position, cuts));
            }
        }
        paper.table(widths, header, rows);
    }

    private List<String> row(PlannedTree tree, int position, List<Map<String, Cut>> cuts) {
        List<String> cells =
                new ArrayList<>(List.of(tree.treeId().value(), units.words(tree.girth()), Integer.toString(position)));
        for (Map<String, Cut> material : cuts) {
            Cut cut = material.get(tree.treeId() + "/" + position);
            cells.add(cut == null ? "" : units.words(cut.piece().length()));
            cells.add(cut == null ? "" : cut.reel());
            cells.add("[  ]");
        }
        cells.add(position == 1 ? counted(tree) : "");
        return cells;
    }

    private static String counted(PlannedTree tree) {
        return tree.others() == 0
                ? Long.toString(tree.fasteners())
                : "%d + %d other".formatted(tree.fasteners(), tree.others());
    }

    private record Cut(PlannedPiece piece, String reel) {}

    private static Map<String, Cut> byKey(MaterialCuts cuts) {
        Map<String, Cut> byKey = new HashMap<>();
        cuts.reels()
                .forEach(reel -> reel.pieces()
                        .forEach(piece -> byKey.put(
                                piece.key(), new Cut(piece, reel.reelId().value()))));
        cuts.uncut().forEach(piece -> byKey.put(piece.key(), new Cut(piece, "not cut")));
        cuts.tooLong().forEach(piece -> byKey.put(piece.key(), new Cut(piece, "not cut")));
        return byKey;
    }
}
