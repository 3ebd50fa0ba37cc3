package org.bandtrail.siteinstalls.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Pictures for tests: white, with a red left top quarter, so that it shows which way they are turned. */
final class SamplePictures {
    /** APP1 segment with an Exif block of one directory entry: orientation, in big-endian order. */
    private static final int[] EXIF = {
        0xFF, 0xE1, 0x00, 0x22, 'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0,
        1, 0, 0, 0, 0, 0, 0, 0, 0
    };

    private static final int ORIENTATION_AT = 29;

    private SamplePictures() {}

    static byte[] drawn(String format, int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height / 2);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    /** A JPEG that says how the camera was held. */
    static byte[] turned(int orientation, int width, int height) throws IOException {
        byte[] jpeg = drawn("jpeg", width, height);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, 2);
        for (int i = 0; i < EXIF.length; i++) {
            bytes.write(i == ORIENTATION_AT ? orientation : EXIF[i]);
        }
        bytes.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }
}
