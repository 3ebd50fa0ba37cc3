package org.bandtrail.supplystock.labels;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.bandtrail.supplystock.deliveries.LotRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Prints, renders at 300 dots per inch as an office printer would, and reads every code back with ZXing's decoder. */
class LabelPdfTest {
    private static final int DPI = 300;
    private static final double DOTS_PER_MICROMETRE = DPI / 25_400.0;

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void every_code_on_every_sheet_reads_back_as_its_reel(LabelSheet sheet) throws Exception {
        List<LabelText> labels = new ArrayList<>();
        for (int index = 0; index < Math.min(5, sheet.perPage()) + 1; index++) {
            labels.add(text("HOLM-%04d".formatted(index + 1)));
        }
        int start = Math.max(1, sheet.perPage() - 3);

        try (PDDocument document = Loader.loadPDF(new LabelPdf(sheet).of(labels, start))) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int index = 0; index < labels.size(); index++) {
                LabelSheet.Spot spot = sheet.spot(index, start);
                BufferedImage page = renderer.renderImageWithDPI(spot.page(), DPI);
                assertThat(read(page, spot, sheet)).isEqualTo(labels.get(index).number());
            }
        }
    }

    @Test
    void the_longest_number_there_can_be_still_reads_on_the_smallest_label() throws Exception {
        String longest = "R-" + "0123456789".repeat(3) + "ABCDEFGH";
        assertThat(longest).hasSize(40);
        LabelSheet sheet = LabelSheet.SINGLE;

        try (PDDocument document = Loader.loadPDF(new LabelPdf(sheet).of(List.of(text(longest)), 1))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, DPI);
            assertThat(read(page, sheet.spot(0, 1), sheet)).isEqualTo(longest);
        }
    }

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void people_read_number_item_length_in_both_systems_width_lot_and_expiry(LabelSheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(new LabelPdf(sheet).of(List.of(text("HOLM-0042")), 1))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("HOLM-0042", "Band tape", "50.29 m / 165.0 ft", "width 127 mm / 5.00 in")
                    .contains("lot L 4711", "use by 2028-03-31");
        }
    }

    @Test
    void letters_that_the_font_does_not_know_do_not_stop_the_printing() throws IOException {
        LabelText label = new LabelText("R-1", List.of("Klebeband \u2192 127 \u4e2d", "Gr\u00fcn"));
        try (PDDocument document = Loader.loadPDF(new LabelPdf(LabelSheet.SINGLE).of(List.of(label), 1))) {
            assertThat(new PDFTextStripper().getText(document)).contains("Klebeband ? 127 ?", "Gr\u00fcn");
        }
    }

    private static LabelText text(String number) {
        return LabelText.of(
                new LotRow(
                        "reel",
                        number,
                        "TAPE-127",
                        "TAPE",
                        50_292,
                        null,
                        "L 4711",
                        LocalDate.of(2028, 3, 31),
                        "SOUND",
                        "accepted",
                        "HOLM",
                        null,
                        "D-1",
                        LocalDate.of(2026, 5, 12)),
                "Band tape",
                127L);
    }

    private static String read(BufferedImage page, LabelSheet.Spot spot, LabelSheet sheet) throws Exception {
        int left = dots(spot.left());
        int top = dots(spot.top());
        int width = Math.min(dots(sheet.labelWidth()), page.getWidth() - left);
        int height = Math.min(dots(sheet.labelHeight()), page.getHeight() - top);
        int[] pixels = page.getRGB(left, top, width, height, null, 0, width);
        BinaryBitmap label = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
        return new QRCodeReader()
                .decode(label, Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    private static int dots(long micrometres) {
        return (int) Math.round(micrometres * DOTS_PER_MICROMETRE);
    }
}
