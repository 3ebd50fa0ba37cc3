package org.bandtrail.supplystock.labels;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** Draws labels onto pages. The code is drawn as squares, so it stays sharp on any printer. */
final class LabelPdf {
    private static final float POINTS_PER_MICROMETRE = 72f / 25_400;
    private static final float PADDING = 5;
    private static final float LARGEST = 18;
    private static final float SMALLEST = 6;
    private static final float LARGEST_TEXT = 9;
    private static final float SMALLEST_TEXT = 5.5f;
    private static final float LEADING = 1.2f;
    private final PDFont bold = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);
    private final PDFont plain = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private final LabelSheet sheet;

    LabelPdf(LabelSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * The labels as a PDF file.
     *
     * @param start first free label of the first sheet, 1 for a fresh sheet
     */
    byte[] of(List<LabelText> labels, int start) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            int pages =
                    labels.isEmpty() ? 1 : sheet.spot(labels.size() - 1, start).page() + 1;
            for (int page = 0; page < pages; page++) {
                PDPage paper = new PDPage(new PDRectangle(points(sheet.pageWidth()), points(sheet.pageHeight())));
                document.addPage(paper);
                draw(document, paper, page, labels, start);
            }
            document.getDocumentInformation().setTitle("Labels of reels and batches");
            document.save(out);
            return out.toByteArray();
        } catch (IOException cannotHappenInMemory) {
            throw new UncheckedIOException(cannotHappenInMemory);
        }
    }

    private void draw(PDDocument document, PDPage paper, int page, List<LabelText> labels, int start)
            throws IOException {
        try (PDPageContentStream ink = new PDPageContentStream(document, paper)) {
            for (int index = 0; index < labels.size(); index++) {
                LabelSheet.Spot spot = sheet.spot(index, start);
                if (spot.page() == page) {
                    float top = points(sheet.pageHeight() - spot.top());
                    label(ink, points(spot.left()), top, labels.get(index));
                }
            }
        }
    }

    private void label(PDPageContentStream ink, float left, float top, LabelText label) throws IOException {
        float height = points(sheet.labelHeight());
        float side = Math.min(height - PADDING, points(sheet.labelWidth()) * 0.4f);
        code(ink, left + PADDING / 2, top - (height - side) / 2, side, QrCode.of(label.number()));
        float textLeft = left + PADDING / 2 + side;
        float width = points(sheet.labelWidth()) - side - 1.5f * PADDING;
        float size = Math.max(SMALLEST, Math.min(LARGEST, width / width(bold, label.number(), 1)));
        float baseline = top - PADDING - size;
        text(ink, bold, size, textLeft, baseline, shortened(bold, size, label.number(), width));
        float room = baseline - (top - height + PADDING / 2);
        float small = Math.clamp(room / (LEADING * label.lines().size()), SMALLEST_TEXT, LARGEST_TEXT);
        for (String line : label.lines()) {
            baseline -= small * LEADING;
            if (baseline < top - height) {
                return;
            }
            text(ink, plain, small, textLeft, baseline, shortened(plain, small, line, width));
        }
    }

    private static void code(PDPageContentStream ink, float left, float top, float side, QrCode code)
            throws IOException {
        float cell = side / (code.size() + 2 * QrCode.QUIET);
        for (int row = 0; row < code.size(); row++) {
            for (int column = 0; column < code.size(); column++) {
                if (code.dark(column, row)) {
                    ink.addRect(
                            left + (column + QrCode.QUIET) * cell, top - (row + 1 + QrCode.QUIET) * cell, cell, cell);
                }
            }
        }
        ink.fill();
    }

    private static void text(PDPageContentStream ink, PDFont font, float size, float left, float baseline, String text)
            throws IOException {
        ink.beginText();
        ink.setFont(font, size);
        ink.newLineAtOffset(left, baseline);
        ink.showText(text);
        ink.endText();
    }

    private static String shortened(PDFont font, float size, String text, float width) throws IOException {
        String shown = drawable(text);
        while (shown.length() > 1 && width(font, shown, size) > width) {
            shown = shown.substring(0, shown.length() - 1);
        }
        return shown;
    }

    private static float width(PDFont font, String text, float size) throws IOException {
        return font.getStringWidth(drawable(text)) / 1_000 * size;
    }

    /** The standard fonts of PDF know Latin letters; what they do not know is shown as a question mark. */
    private static String drawable(String text) {
        return text.replaceAll("[^\\x20-\\x7E\\xA1-\\xFF]", "?");
    }

    private static float points(long micrometres) {
        return micrometres * POINTS_PER_MICROMETRE;
    }
}
