package org.bandtrail.supplystock.slittings;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.ReelId;

/** Why a wish to slit is refused. Each message names the value and what to do. */
public abstract sealed class SlittingRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private SlittingRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** It was done before. */
    public static final class SlittingDoneAlready extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        SlittingDoneAlready(SlittingId slitting) {
            super(409, "Slitting [%s] was entered before. Give this one an identity of its own.".formatted(slitting));
        }
    }

    /** Nothing would be made. */
    public static final class NoStrips extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        NoStrips(SlittingId slitting) {
            super(422, "Slitting [%s] makes no strip. Enter at least one.".formatted(slitting));
        }
    }

    /** Strips and trim are not as wide as the reel. */
    public static final class WidthsDoNotAddUp extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        WidthsDoNotAddUp(SlittingId slitting, Length width, Length strips, Length trim) {
            super(
                    422,
                    "Slitting [%s]: strips of %d mm and a trim of %d mm make %d mm, the reel is %d mm wide."
                                    .formatted(slitting, strips.mm(), trim.mm(), strips.mm() + trim.mm(), width.mm())
                            + " Measure the trim, or take other items.");
        }
    }

    /** Two reels would bear one label. */
    public static final class LabelTwice extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        LabelTwice(SlittingId slitting, ReelId reel) {
            super(422, "Slitting [%s] names reel [%s] twice. Give each strip its own label.".formatted(slitting, reel));
        }
    }

    /** The books do not know how wide it is. */
    public static final class WidthUnknown extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        WidthUnknown(MaterialCode material) {
            super(422, "Item [%s] has no width in the register. Register it with one.".formatted(material));
        }
    }

    /** Tape does not become mesh. */
    public static final class OtherKind extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        OtherKind(MaterialCode wide, MaterialCode narrow) {
            super(422, "Item [%s] cannot be slit into [%s]; they are of two kinds.".formatted(wide, narrow));
        }
    }

    /** The receipt of the wide reel is not in the books. */
    public static final class ReelUnknown extends SlittingRefused {
        private static final long serialVersionUID = 1L;

        ReelUnknown(ReelId reel) {
            super(409, "The receipt of reel [%s] is not in the books. Receive it first.".formatted(reel));
        }
    }
}
