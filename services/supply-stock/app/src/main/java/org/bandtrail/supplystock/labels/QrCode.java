package org.bandtrail.supplystock.labels;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004) as a square of dark and light cells, at error correction level Q: a quarter of it may be
 * scratched or dirty, which it will be.
 *
 * @param cells of the square, without the quiet zone of four cells that must be left free around it
 */
record QrCode(ByteMatrix cells) {
    /** Cells that must stay free on each side. */
    static final int QUIET = 4;

    /**
     * The code of a text.
     *
     * @throws IllegalArgumentException naming the text if it is too long
     */
    static QrCode of(String text) {
        try {
            return new QrCode(
                    Encoder.encode(text, ErrorCorrectionLevel.Q, Map.of(EncodeHintType.CHARACTER_SET, "ISO-8859-1"))
                            .getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("[%s] does not fit into a QR code.".formatted(text), tooLong);
        }
    }

    /** Cells along one side. */
    int size() {
        return cells.getWidth();
    }

    boolean dark(int column, int row) {
        return cells.get(column, row) == 1;
    }
}
