package org.bandtrail.siteinstalls.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A picture as it is stored: JPEG, upright, without metadata, its longest side at most 1600 pixels.
 *
 * @param jpeg the bytes
 * @param width in pixels
 * @param height in pixels
 */
record Picture(byte[] jpeg, int width, int height) {
    /** Most bytes of a file that comes in. */
    static final long MOST_BYTES = 8_000_000;

    /** Most pixels it may unfold to; phones take up to 50 million. */
    static final long MOST_PIXELS = 64_000_000;

    private static final int LONGEST_SIDE = 1600;
    private static final float QUALITY = 0.85f;
    private static final int FIRST_TURNED = 5;

    /**
     * Reads a file and writes it anew. Its size in pixels is looked at before a pixel is decoded, and no more pixels
     * are kept in memory than about four times those that are stored.
     *
     * @throws PhotoRefused if it is too large, no JPEG or PNG, or damaged
     */
    static Picture of(byte[] file) {
        if (file.length > MOST_BYTES) {
            throw new PhotoRefused.TooLarge(file.length, MOST_BYTES);
        }
        boolean isJpeg = startsWith(file, 0xFF, 0xD8, 0xFF);
        if (!isJpeg && !startsWith(file, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            throw new PhotoRefused.NoPicture("it is neither JPEG nor PNG");
        }
        try {
            BufferedImage decoded = decoded(file, isJpeg ? "jpeg" : "png");
            BufferedImage upright = upright(decoded, isJpeg ? ExifOrientation.of(file) : 1);
            return new Picture(written(upright), upright.getWidth(), upright.getHeight());
        } catch (IOException | RuntimeException damaged) {
            if (damaged instanceof PhotoRefused refused) {
                throw refused;
            }
            // The decoders throw all sorts of things at a damaged file; none of them is the house's own fault.
            throw new PhotoRefused.NoPicture("it is damaged (" + damaged.getMessage() + ")");
        }
    }

    private static BufferedImage decoded(byte[] file, String format) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream input = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(input, true, true);
            long width = reader.getWidth(0);
            long height = reader.getHeight(0);
            if (width * height > MOST_PIXELS) {
                throw new PhotoRefused.TooManyPixels(width, height, MOST_PIXELS);
            }
            ImageReadParam every = reader.getDefaultReadParam();
            int step = (int) Math.max(1, Math.max(width, height) / (2L * LONGEST_SIDE));
            every.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, every);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage image, int orientation) {
        double scale = Math.min(1, LONGEST_SIDE / (double) Math.max(image.getWidth(), image.getHeight()));
        int width = (int) Math.max(1, Math.round(image.getWidth() * scale));
        int height = (int) Math.max(1, Math.round(image.getHeight() * scale));
        boolean turned = orientation >= FIRST_TURNED;
        BufferedImage upright =
                new BufferedImage(turned ? height : width, turned ? width : height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = upright.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, upright.getWidth(), upright.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.transform(turn(orientation, width, height));
        pen.drawImage(image, 0, 0, width, height, null);
        pen.dispose();
        return upright;
    }

    /** From the picture as the sensor saw it to how it was seen; Exif 2.3, orientation. */
    private static AffineTransform turn(int orientation, int width, int height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    private static byte[] written(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam settings = writer.getDefaultWriteParam();
            settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            settings.setCompressionQuality(QUALITY);
            writer.setOutput(output);
            writer.write(null, new IIOImage(image, null, null), settings);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static boolean startsWith(byte[] file, int... signs) {
        if (file.length < signs.length) {
            return false;
        }
        for (int i = 0; i < signs.length; i++) {
            if ((file[i] & 0xFF) != signs[i]) {
                return false;
            }
        }
        return true;
    }
}
