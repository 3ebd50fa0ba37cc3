package org.bandtrail.siteinstalls.cutsheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.bandtrail.siteinstalls.cutplans.CutPlanView;
import org.bandtrail.siteinstalls.cutplans.MaterialCuts;
import org.bandtrail.siteinstalls.cutplans.PlannedPiece;
import org.bandtrail.siteinstalls.cutplans.PlannedTree;

/**
 * A label for each band, in the order of the walk: tree, band and the lengths of its pieces. Printed on blank sheets of
 * 3 x 8 labels (A4) or 3 x 10 (letter); common trade sizes, from memory.
 */
final class TreeLabelsPdf {
    private static final int ACROSS = 3;
    private static final float PADDING = 8;
    private static final float LARGE = 14;
    private static final float SMALL = 8.5f;
    private final PDFont bold = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);
    private final PDFont plain = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private final SheetUnits units;
    private final int down;

    TreeLabelsPdf(SheetUnits units) {
        this.units = units;
        this.down = units == SheetUnits.SI ? 8 : 10;
    }

    /** What stands on one label. */
    record Label(String tree, List<String> lines) {}

    /**
     * The labels as a PDF file.
     *
     * @param start first free label of the first sheet, counted row by row from 1
     * @throws IllegalArgumentException naming the start if a sheet has no such label
     */
    byte[] of(CutPlanView.Whole whole, int start) {
        int perPage = ACROSS * down;
        if (start < 1 || start > perPage) {
            throw new IllegalArgumentException(
                    "A sheet has labels 1 to %d, there is no [%d]. Count row by row.".formatted(perPage, start));
        }
        List<Label> labels = labels(whole.parts());
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            int last = labels.size() + start - 2;
            for (int page = 0; page <= last / perPage; page++) {
                page(document, labels, page * perPage, start);
            }
            document.getDocumentInformation()
                    .setTitle("Labels of cut plan " + whole.plan().planId());
            document.save(out);
            return out.toByteArray();
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }

    private void page(PDDocument document, List<Label> labels, int first, int start) throws IOException {
        PDPage page = new PDPage(units.paper());
        document.addPage(page);
        float width = units.paper().getWidth() / ACROSS;
        float height = units.paper().getHeight() / (down + (units == SheetUnits.SI ? 0 : 1));
        float top = units.paper().getHeight() - (units == SheetUnits.SI ? 0 : height / 2);
        try (PDPageContentStream ink = new PDPageContentStream(document, page)) {
            for (int spot = 0; spot < ACROSS * down; spot++) {
                int index = first + spot - (start - 1);
                if (index >= 0 && index < labels.size()) {
                    float left = spot % ACROSS * width + PADDING;
                    label(ink, left, top - (float) (spot / ACROSS) * height - PADDING, labels.get(index));
                }
            }
        }
    }

    private void label(PDPageContentStream ink, float left, float top, Label label) throws IOException {
        float baseline = top - LARGE;
        text(ink, bold, LARGE, left, baseline, label.tree());
        for (String line : label.lines()) {
            baseline -= SMALL * 1.35f;
            text(ink, plain, SMALL, left, baseline, line);
        }
    }

    private static void text(PDPageContentStream ink, PDFont font, float size, float x, float baseline, String text)
            throws IOException {
        ink.beginText();
        ink.setFont(font, size);
        ink.newLineAtOffset(x, baseline);
        ink.showText(Paper.printable(text));
        ink.endText();
    }

    private List<Label> labels(CutPlanView.Parts parts) {
        List<Label> labels = new ArrayList<>();
        for (PlannedTree tree : parts.trees()) {
            for (int position = 1; position <= tree.bands(); position++) {
                List<String> lines = new ArrayList<>();
                lines.add("tag %s, site %s, girth %s".formatted(tree.tag(), tree.siteId(), units.words(tree.girth())));
                if (tree.bands() > 1) {
                    lines.add("band %d of %d, 1 is the lowest".formatted(position, tree.bands()));
                }
                for (MaterialCuts cuts : parts.materials()) {
                    lines.add(line(cuts, tree.treeId() + "/" + position));
                }
                labels.add(new Label(tree.treeId().value(), lines));
            }
        }
        return labels;
    }

    private String line(MaterialCuts cuts, String key) {
        return cuts.reels().stream()
                .flatMap(reel -> reel.pieces().stream())
                .filter(piece -> piece.key().equals(key))
                .map(PlannedPiece::length)
                .map(length -> "%s %s".formatted(cuts.material(), units.words(length)))
                .findFirst()
                .orElse(cuts.material() + " not cut");
    }
}
