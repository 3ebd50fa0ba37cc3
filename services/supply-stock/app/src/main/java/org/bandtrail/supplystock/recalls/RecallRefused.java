package org.bandtrail.supplystock.recalls;

import java.util.List;
import org.bandtrail.eventstore.Refusal;

/** Why a wish about a recall, or about goods of a recalled lot, is refused. */
public abstract sealed class RecallRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private RecallRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class RecallKnownAlready extends RecallRefused {
        private static final long serialVersionUID = 1L;

        RecallKnownAlready(RecallId recall, String lot) {
            super("Recall [%s] exists already, for lot %s. Choose another identity.".formatted(recall, lot));
        }
    }

    /** The lot is recalled already. */
    public static final class LotRecalledAlready extends RecallRefused {
        private static final long serialVersionUID = 1L;

        LotRecalledAlready(String lot, String recall) {
            super("Lot [%s] is recalled already, by recall %s. Look there at what is still out."
                    .formatted(lot, recall));
        }
    }

    /** No lot is named. */
    public static final class LotMissing extends RecallRefused {
        private static final long serialVersionUID = 1L;

        LotMissing(RecallId recall) {
            super("Recall [%s] names no lot. Write the lot as it stands on the label.".formatted(recall));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** Nobody or several delivered something under this lot. */
    public static final class WhoseLot extends RecallRefused {
        private static final long serialVersionUID = 1L;

        WhoseLot(String lot, List<String> suppliers) {
            super(
                    suppliers.isEmpty()
                            ? "Nothing of lot [%s] was delivered yet. Check the lot, or name its supplier."
                                    .formatted(lot)
                            : "Lot [%s] was delivered by %s. Each prints its own; name the supplier whose lot it is."
                                    .formatted(lot, String.join(" and ", suppliers)));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** A recall is started and lifted with a reason. */
    public static final class ReasonMissing extends RecallRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(RecallId recall) {
            super("Recall [%s] needs a reason. Say what is wrong, or why it is right again.".formatted(recall));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** There is nothing to lift. */
    public static final class NotOpen extends RecallRefused {
        private static final long serialVersionUID = 1L;

        NotOpen(RecallId recall) {
            super("Recall [%s] is not open. Check the identity; it may have been lifted.".formatted(recall));
        }
    }

    /** Nothing of a recalled lot is handed out or released. */
    public static final class StillRecalled extends RecallRefused {
        private static final long serialVersionUID = 1L;

        StillRecalled(String holding, String id, RecallRow recall) {
            super("%s [%s] is of lot %s, which is recalled: %s. Take another one, or lift recall %s first."
                    .formatted(
                            holding.equals("reel") ? "Reel" : "Batch",
                            id,
                            recall.saying(),
                            recall.reason(),
                            recall.recallId()));
        }
    }
}
