package org.bandtrail.siteinstalls.photos;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, read from a JPEG before its metadata is dropped: Exif 2.3, tag 0x0112 of the first directory,
 * 1 to 8. A file without it, or whose metadata is damaged, counts as upright (1).
 */
final class ExifOrientation {
    private static final int UPRIGHT = 1;
    private static final int MARKER = 0xFF;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int TAG = 0x0112;
    private static final int ENTRY_BYTES = 12;
    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

    private ExifOrientation() {}

    /** 1 upright, 3 upside down, 6 and 8 turned; even numbers up to 4 and 5, 7 are mirrored. */
    static int of(byte[] jpeg) {
        ByteBuffer file = ByteBuffer.wrap(jpeg);
        int at = 2; // after the start of the image
        while (at + 4 <= jpeg.length && (jpeg[at] & MARKER) == MARKER) {
            int marker = jpeg[at + 1] & MARKER;
            int length = file.getShort(at + 2) & 0xFFFF;
            if (marker == START_OF_SCAN || length < 2 || at + 2 + length > jpeg.length) {
                return UPRIGHT;
            }
            if (marker == APP1 && startsWithExif(jpeg, at + 4)) {
                return inDirectory(file.slice(at + 4 + EXIF.length, Math.max(0, length - 2 - EXIF.length)));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static boolean startsWithExif(byte[] jpeg, int at) {
        for (int i = 0; i < EXIF.length; i++) {
            if (at + i >= jpeg.length || jpeg[at + i] != EXIF[i]) {
                return false;
            }
        }
        return true;
    }

    private static int inDirectory(ByteBuffer tiff) {
        if (tiff.capacity() < 8) {
            return UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        if (directory < 8 || directory > tiff.capacity() - 2) {
            return UPRIGHT;
        }
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int entry = 0; entry < entries; entry++) {
            int at = directory + 2 + entry * ENTRY_BYTES;
            if (at + ENTRY_BYTES > tiff.capacity()) {
                return UPRIGHT;
            }
            if ((tiff.getShort(at) & 0xFFFF) == TAG) {
                int value = tiff.getShort(at + 8) & 0xFFFF;
                return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        }
        return UPRIGHT;
    }
}
