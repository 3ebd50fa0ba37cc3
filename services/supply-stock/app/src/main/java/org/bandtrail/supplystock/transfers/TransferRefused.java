package org.bandtrail.supplystock.transfers;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.supplystock.holdings.Place;

/** Why a wish about a transfer is refused. */
public abstract sealed class TransferRefused extends Refusal {
    private static final long serialVersionUID = 1L;
    private final int status;

    private TransferRefused(int status, String message) {
        super(message);
        this.status = status;
    }

    @Override
    public int status() {
        return status;
    }

    /** It was sent before. */
    public static final class TransferSentAlready extends TransferRefused {
        private static final long serialVersionUID = 1L;

        TransferSentAlready(TransferId transfer) {
            super(409, "Transfer [%s] was sent before. Give this one an identity of its own.".formatted(transfer));
        }
    }

    /** Nothing is on it. */
    public static final class TransferEmpty extends TransferRefused {
        private static final long serialVersionUID = 1L;

        TransferEmpty(TransferId transfer) {
            super(422, "Transfer [%s] has nothing on it. Scan at least one reel or batch.".formatted(transfer));
        }
    }

    /** It ends where it starts, or where nothing can arrive. */
    public static final class TransferNowhere extends TransferRefused {
        private static final long serialVersionUID = 1L;

        TransferNowhere(TransferId transfer, Place to) {
            super(
                    422,
                    "Transfer [%s] cannot go to [%s]. Name another depot, one of its bins, or a vehicle."
                            .formatted(transfer, to));
        }
    }

    /** Nobody sent it. */
    public static final class TransferUnknown extends TransferRefused {
        private static final long serialVersionUID = 1L;

        TransferUnknown(TransferId transfer) {
            super(404, "Transfer [%s] was never sent. Check its number.".formatted(transfer));
        }
    }

    /** It has arrived or was called off. */
    public static final class TransferEnded extends TransferRefused {
        private static final long serialVersionUID = 1L;

        TransferEnded(TransferId transfer) {
            super(
                    409,
                    "Transfer [%s] has ended; nothing of it is on the way. What turns up later is entered by a count."
                            .formatted(transfer));
        }
    }

    /** Calling off needs a reason. */
    public static final class ReasonMissing extends TransferRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(TransferId transfer) {
            super(422, "Calling off transfer [%s] needs a reason. Say why.".formatted(transfer));
        }
    }
}
