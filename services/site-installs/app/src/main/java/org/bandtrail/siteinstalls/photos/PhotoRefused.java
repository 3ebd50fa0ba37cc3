package org.bandtrail.siteinstalls.photos;

import org.bandtrail.eventstore.Refusal;

/** Why a file is not taken as a photo. */
public abstract sealed class PhotoRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private static final double BYTES_IN_MB = 1_000_000.0;

    private PhotoRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** The file has too many bytes. */
    public static final class TooLarge extends PhotoRefused {
        private static final long serialVersionUID = 1L;

        TooLarge(long bytes, long most) {
            super("The photo has %.1f MB; at most %.0f MB are taken. Send it in a smaller size."
                    .formatted(bytes / BYTES_IN_MB, most / BYTES_IN_MB));
        }

        @Override
        public String problem() {
            return "photo-too-large";
        }
    }

    /** The file is neither JPEG nor PNG, or damaged. */
    public static final class NoPicture extends PhotoRefused {
        private static final long serialVersionUID = 1L;

        NoPicture(String why) {
            super("The file cannot be read as a photo: %s. Send a JPEG or PNG picture.".formatted(why));
        }

        @Override
        public String problem() {
            return "photo-unreadable";
        }
    }

    /** The picture unfolds to more pixels than any camera of a crew takes. */
    public static final class TooManyPixels extends PhotoRefused {
        private static final long serialVersionUID = 1L;

        TooManyPixels(long width, long height, long most) {
            super("The photo is %d x %d pixels; at most %d million are taken. Send it in a smaller size."
                    .formatted(width, height, most / 1_000_000));
        }

        @Override
        public String problem() {
            return "photo-too-many-pixels";
        }
    }
}
