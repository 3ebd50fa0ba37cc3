package org.bandtrail.supplystock.deliveries;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about a delivery is refused. */
public abstract sealed class DeliveryRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private DeliveryRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** The number is taken. */
    public static final class DeliveryRecordedAlready extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        DeliveryRecordedAlready(DeliveryId delivery) {
            super(
                    409,
                    "Delivery [%s] was recorded before. Give the new delivery a number of its own."
                            .formatted(delivery));
        }
    }

    /** Nothing is in it. */
    public static final class DeliveryEmpty extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        DeliveryEmpty(DeliveryId delivery) {
            super(
                    422,
                    "Delivery [%s] has a line with nothing in it. Enter each reel or batch that arrived."
                            .formatted(delivery));
        }
    }

    /** A reel without length, a batch without pieces. */
    public static final class NothingOnIt extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        NothingOnIt(DeliveryId delivery, String key) {
            super(422, "[%s] of delivery [%s] has nothing on it. Measure or count it.".formatted(key, delivery));
        }
    }

    /** One identity for two things. */
    public static final class IdentityTwice extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        IdentityTwice(DeliveryId delivery, String key) {
            super(
                    422,
                    "[%s] occurs twice in delivery [%s]. Give each reel and batch an identity of its own."
                            .formatted(key, delivery));
        }
    }

    /** It did not come with this delivery. */
    public static final class NotInDelivery extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        NotInDelivery(DeliveryId delivery, String key) {
            super(
                    409,
                    "[%s] did not come with delivery [%s]. Look at the label, and at the delivery."
                            .formatted(key, delivery));
        }
    }

    /** It is not set aside. */
    public static final class NotSetAside extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        NotSetAside(DeliveryId delivery, String key, String state) {
            super(
                    409,
                    "[%s] of delivery [%s] is %s, not set aside. There is nothing to accept."
                            .formatted(key, delivery, state));
        }
    }

    /** It went back before. */
    public static final class SentBackAlready extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        SentBackAlready(DeliveryId delivery, String key) {
            super(409, "[%s] of delivery [%s] went back to the supplier before.".formatted(key, delivery));
        }
    }

    /** Sending back needs a reason. */
    public static final class SentBackWithoutReason extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        SentBackWithoutReason(DeliveryId delivery) {
            super(
                    422,
                    "Why does something of delivery [%s] go back? Write the reason; the supplier will ask."
                            .formatted(delivery));
        }
    }

    /** Nothing was chosen. */
    public static final class NothingChosen extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        NothingChosen(DeliveryId delivery) {
            super(422, "Nothing of delivery [%s] was chosen. Choose the reels or batches.".formatted(delivery));
        }
    }

    /** Neither an order nor a cost. */
    public static final class CostMissing extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public CostMissing(DeliveryId delivery, int line) {
            super(
                    422,
                    "Line [%d] of delivery [%s] fulfils no order, so its cost is not known. Give the cost of the line."
                            .formatted(line, delivery));
        }
    }

    /** Neither an order nor an item. */
    public static final class ItemMissing extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public ItemMissing(DeliveryId delivery, int line) {
            super(
                    422,
                    "Line [%d] of delivery [%s] names neither a line of the order nor an item. Say what arrived."
                            .formatted(line, delivery));
        }
    }

    /** Neither an order nor a supplier. */
    public static final class SupplierMissing extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public SupplierMissing(DeliveryId delivery) {
            super(422, "Delivery [%s] names neither an order nor a supplier. Say who brought it.".formatted(delivery));
        }
    }

    /** The order is with somebody else. */
    public static final class AnotherSupplier extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public AnotherSupplier(DeliveryId delivery, String given, String ordered) {
            super(
                    422,
                    "Delivery [%s] names supplier [%s], but the order is with [%s]. Correct one of them."
                            .formatted(delivery, given, ordered));
        }
    }

    /** Nobody recorded it. */
    public static final class DeliveryUnknown extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public DeliveryUnknown(DeliveryId delivery) {
            super(404, "Delivery [%s] was never recorded. Check the number.".formatted(delivery));
        }
    }

    /** It has been moved or used since. */
    public static final class NoLongerWhole extends DeliveryRefused {
        private static final long serialVersionUID = 1L;

        /** Names what it is about. */
        public NoLongerWhole(DeliveryId delivery, String key, String place) {
            super(
                    409,
                    "[%s] of delivery [%s] is now at [%s]. Bring it back to the depot first; then it can go to the supplier."
                            .formatted(key, delivery, place));
        }
    }
}
