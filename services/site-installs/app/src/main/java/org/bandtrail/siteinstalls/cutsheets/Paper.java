package org.bandtrail.siteinstalls.cutsheets;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.jspecify.annotations.Nullable;

/** Writes headings, lines, tables and bars down one page after another. Sizes are points, 1/72 in. */
final class Paper implements AutoCloseable {
    private static final float MARGIN = 40;
    private static final float LINE = 15;
    private static final float SIZE = 9.5f;
    private static final float LARGE = 15;
    private static final float BAR = 24;
    private static final float TINY = 7;
    private final PDFont plain = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private final PDFont bold = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);
    private final PDDocument document;
    private final PDRectangle format;
    private @Nullable PDPageContentStream ink;
    private float y;

    Paper(PDDocument document, PDRectangle format) {
        this.document = document;
        this.format = format;
    }

    /**
     * One stretch of a bar.
     *
     * @param share of the bar's whole length, above 0
     * @param words that stand in it, one under the other, each if it fits
     * @param dark whether it is lost
     */
    record Stretch(double share, List<String> words, boolean dark) {}

    void heading(String text) throws IOException {
        room(4 * LINE);
        y -= LINE;
        write(bold, LARGE, MARGIN, y, text);
        y -= LINE * 1.4f;
    }

    void text(String text) throws IOException {
        room(LINE);
        write(plain, SIZE, MARGIN, y, text);
        y -= LINE;
    }

    /** A table; its header is repeated on every page. */
    void table(float[] widths, List<String> header, List<List<String>> rows) throws IOException {
        room(3 * LINE);
        row(bold, widths, header);
        for (List<String> cells : rows) {
            if (y < MARGIN + LINE) {
                turn();
                row(bold, widths, header);
            }
            row(plain, widths, cells);
        }
    }

    /** A bar as wide as the page, with its stretches from the left. */
    void bar(String title, List<Stretch> stretches) throws IOException {
        room(BAR + 2 * LINE);
        write(bold, SIZE, MARGIN, y, title);
        y -= 6 + BAR;
        float x = MARGIN;
        for (Stretch stretch : stretches) {
            float width = (float) (stretch.share() * width());
            PDPageContentStream now = open();
            now.setLineWidth(0.7f);
            now.addRect(x, y, width, BAR);
            if (stretch.dark()) {
                now.setNonStrokingColor(0.75f);
                now.fillAndStroke();
                now.setNonStrokingColor(0f);
            } else {
                now.stroke();
            }
            float baseline = y + BAR - 9;
            for (String words : stretch.words()) {
                if (plain.getStringWidth(printable(words)) / 1000 * TINY < width - 3) {
                    write(plain, TINY, x + 2, baseline, words);
                }
                baseline -= 10;
            }
            x += width;
        }
        y -= LINE;
    }

    @Override
    public void close() throws IOException {
        if (ink != null) {
            ink.close();
            ink = null;
        }
    }

    private float width() {
        return format.getWidth() - 2 * MARGIN;
    }

    private void row(PDFont font, float[] widths, List<String> cells) throws IOException {
        float all = 0;
        for (float width : widths) {
            all += width;
        }
        float x = MARGIN;
        for (int column = 0; column < widths.length; column++) {
            write(font, SIZE, x, y, cells.get(column));
            x += width() * widths[column] / all;
        }
        y -= 4;
        PDPageContentStream now = open();
        now.setLineWidth(0.3f);
        now.moveTo(MARGIN, y);
        now.lineTo(format.getWidth() - MARGIN, y);
        now.stroke();
        y -= LINE - 4;
    }

    private void write(PDFont font, float size, float x, float baseline, String text) throws IOException {
        PDPageContentStream now = open();
        now.beginText();
        now.setFont(font, size);
        now.newLineAtOffset(x, baseline);
        now.showText(printable(text));
        now.endText();
    }

    /** The built-in fonts know Latin letters only; anything else is shown as a question mark, not left out. */
    static String printable(String text) {
        return text.replaceAll("[^\\x20-\\x7E\\xA1-\\xFF]", "?");
    }

    private void room(float points) throws IOException {
        open();
        if (y < MARGIN + points) {
            turn();
        }
    }

    private void turn() throws IOException {
        close();
        open();
    }

    private PDPageContentStream open() throws IOException {
        PDPageContentStream now = ink;
        if (now == null) {
            PDPage page = new PDPage(format);
            document.addPage(page);
            now = new PDPageContentStream(document, page);
            ink = now;
            y = format.getHeight() - MARGIN - LARGE;
        }
        return now;
    }
}
