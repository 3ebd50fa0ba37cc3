package org.bandtrail.supplystock.labels;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Paper that labels are printed on. All measures are in micrometres, so that inches (25,400) and millimetres are both
 * exact. Sizes are common trade sizes of blank label sheets, from memory; the margins follow from centring.
 */
public enum LabelSheet {
    /** A4, 3 across and 8 down, 70 x 37 mm without gaps, 0.5 mm above and below. */
    A4_3X8("a4-3x8", 210_000, 297_000, 3, 8, 70_000, 37_000, 70_000, 37_000),
    /** A4, 2 across and 7 down, 99.1 x 38.1 mm, 2.5 mm between columns: for large reels. */
    A4_2X7("a4-2x7", 210_000, 297_000, 2, 7, 99_100, 38_100, 101_600, 38_100),
    /** US Letter, 3 across and 10 down, 2.625 x 1 in, 1/8 in between columns. */
    LETTER_3X10("letter-3x10", 215_900, 279_400, 3, 10, 66_675, 25_400, 69_850, 25_400),
    /** US Letter, 2 across and 5 down, 4 x 2 in, 3/16 in between columns: for large reels. */
    LETTER_2X5("letter-2x5", 215_900, 279_400, 2, 5, 101_600, 50_800, 106_362, 50_800),
    /** One label of 62 x 29 mm from a label printer. */
    SINGLE("single-62x29", 62_000, 29_000, 1, 1, 62_000, 29_000, 62_000, 29_000);

    private final String word;
    private final long pageWidth;
    private final long pageHeight;
    private final int across;
    private final int down;
    private final long labelWidth;
    private final long labelHeight;
    private final long pitchAcross;
    private final long pitchDown;

    LabelSheet(
            String word,
            long pageWidth,
            long pageHeight,
            int across,
            int down,
            long labelWidth,
            long labelHeight,
            long pitchAcross,
            long pitchDown) {
        this.word = word;
        this.pageWidth = pageWidth;
        this.pageHeight = pageHeight;
        this.across = across;
        this.down = down;
        this.labelWidth = labelWidth;
        this.labelHeight = labelHeight;
        this.pitchAcross = pitchAcross;
        this.pitchDown = pitchDown;
    }

    /**
     * The place of a label.
     *
     * @param page 0 for the first page
     * @param left edge, micrometres from the left edge of the page
     * @param top edge, micrometres from the top edge of the page
     */
    public record Spot(int page, long left, long top) {}

    /**
     * Where a label goes, row by row from the top left.
     *
     * @param index 0 for the first label printed
     * @param start first free label of the first sheet, 1 for a fresh sheet
     * @throws IllegalArgumentException naming the start if the sheet has no such label
     */
    public Spot spot(int index, int start) {
        if (start < 1 || start > perPage()) {
            throw new IllegalArgumentException("A sheet [%s] has labels 1 to %d, there is no [%d]. Count row by row."
                    .formatted(word, perPage(), start));
        }
        int at = index + start - 1;
        int onPage = at % perPage();
        return new Spot(
                at / perPage(),
                marginLeft() + onPage % across * pitchAcross,
                marginTop() + onPage / across * pitchDown);
    }

    private long marginLeft() {
        return (pageWidth - (across - 1) * pitchAcross - labelWidth) / 2;
    }

    private long marginTop() {
        return (pageHeight - (down - 1) * pitchDown - labelHeight) / 2;
    }

    /** Labels on one page. */
    public int perPage() {
        return across * down;
    }

    /** Width of the page, micrometres. */
    public long pageWidth() {
        return pageWidth;
    }

    /** Height of the page, micrometres. */
    public long pageHeight() {
        return pageHeight;
    }

    /** Width of one label, micrometres. */
    public long labelWidth() {
        return labelWidth;
    }

    /** Height of one label, micrometres. */
    public long labelHeight() {
        return labelHeight;
    }

    /** The word the sheet is asked for by, such as {@code a4-3x8}. */
    public String word() {
        return word;
    }

    /**
     * The sheet of this word.
     *
     * @throws IllegalArgumentException naming the word and those that are known
     */
    public static LabelSheet of(String word) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.word.equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no label sheet [%s]. Choose one of %s."
                        .formatted(
                                word,
                                Arrays.stream(values()).map(LabelSheet::word).collect(Collectors.joining(", ")))));
    }
}
