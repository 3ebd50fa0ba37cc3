package org.bandtrail.supplystock.kits;

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

/** Writes headings, lines and tables down one page after another. Sizes are points. */
final class SheetPages {
    private static final float MARGIN = 42;
    private static final float LINE = 15;
    private static final float SIZE = 10;
    private static final float HEADING = 15;
    private static final PDFont PLAIN = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private static final PDFont BOLD = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);

    private final PDDocument document;
    private final PDRectangle paper;

    @Nullable
    private PDPageContentStream page;

    private float y;

    SheetPages(PDDocument document, boolean letter) {
        this.document = document;
        this.paper = letter ? PDRectangle.LETTER : PDRectangle.A4;
    }

    void heading(String text) throws IOException {
        room(3 * LINE);
        y -= LINE / 2;
        write(BOLD, HEADING, MARGIN, text);
        y -= LINE * 1.5f;
    }

    void text(String text) throws IOException {
        room(LINE);
        write(PLAIN, SIZE, MARGIN, text);
        y -= LINE;
    }

    /** A table; its header is repeated on every page. */
    void table(float[] widths, List<String> header, List<List<String>> rows) throws IOException {
        room(2 * LINE);
        row(BOLD, widths, header);
        for (List<String> cells : rows) {
            if (y < MARGIN + LINE) {
                turn();
                row(BOLD, widths, header);
            }
            row(PLAIN, widths, cells);
        }
    }

    void signature(String whose, String state) throws IOException {
        room(4 * LINE);
        y -= 2 * LINE;
        rule(0.8f);
        y -= LINE;
        write(PLAIN, SIZE, MARGIN, whose + ": " + state);
        y -= LINE;
    }

    void close() throws IOException {
        if (page != null) {
            page.close();
            page = null;
        }
    }

    private void row(PDFont font, float[] widths, List<String> cells) throws IOException {
        float all = 0;
        for (float width : widths) {
            all += width;
        }
        float x = MARGIN;
        for (int column = 0; column < widths.length; column++) {
            write(font, SIZE, x, cells.get(column));
            x += (paper.getWidth() - 2 * MARGIN) * widths[column] / all;
        }
        y -= 4;
        rule(0.3f);
        y -= LINE - 4;
    }

    private void rule(float width) throws IOException {
        PDPageContentStream now = open();
        now.setLineWidth(width);
        now.moveTo(MARGIN, y);
        now.lineTo(paper.getWidth() - MARGIN, y);
        now.stroke();
    }

    private void write(PDFont font, float size, float x, String text) throws IOException {
        PDPageContentStream now = open();
        now.beginText();
        now.setFont(font, size);
        now.newLineAtOffset(x, y);
        now.showText(printable(text));
        now.endText();
    }

    /** The built-in fonts know Latin letters only; anything else is shown as a question mark, not left out. */
    private static String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints()
                .forEach(point -> printable.append(
                        point >= 32 && point < 127 || point > 160 && point < 256 ? Character.toString(point) : "?"));
        return printable.toString();
    }

    private void room(float points) throws IOException {
        if (page != null && y < MARGIN + points) {
            turn();
        }
    }

    private void turn() throws IOException {
        close();
        open();
    }

    private PDPageContentStream open() throws IOException {
        PDPageContentStream now = page;
        if (now == null) {
            PDPage sheet = new PDPage(paper);
            document.addPage(sheet);
            now = new PDPageContentStream(document, sheet);
            page = now;
            y = paper.getHeight() - MARGIN - HEADING;
        }
        return now;
    }
}
