package org.bandtrail.siteinstalls.cutsheets;

import java.util.Locale;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;

/** How lengths stand on paper, and which paper that is. */
enum SheetUnits {
    /** Millimetres, on A4. */
    SI(PDRectangle.A4) {
        @Override
        String words(Length length) {
            return String.format(Locale.ENGLISH, "%,d mm", length.mm());
        }
    },
    /** Feet and inches to the eighth, on letter. */
    US(PDRectangle.LETTER) {
        @Override
        String words(Length length) {
            return LengthText.feetAndInches(length);
        }
    };

    private final PDRectangle paper;

    SheetUnits(PDRectangle paper) {
        this.paper = paper;
    }

    PDRectangle paper() {
        return paper;
    }

    abstract String words(Length length);

    /**
     * Reads the word of a request.
     *
     * @throws IllegalArgumentException naming the word if it is neither
     */
    static SheetUnits of(String word) {
        return switch (word) {
            case "si" -> SI;
            case "us" -> US;
            default -> throw new IllegalArgumentException("units [%s] is neither si nor us.".formatted(word));
        };
    }
}
