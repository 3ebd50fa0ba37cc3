package org.bandtrail.supplystock.landedcosts;

import java.util.List;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Money;

/** Why an amount is not spread. */
public abstract sealed class LandedCostRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private LandedCostRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class SpreadBefore extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        SpreadBefore(LandedCostId id) {
            super("Landed cost [%s] was spread before. Give the new one an identity of its own.".formatted(id));
        }
    }

    /** There is no amount. */
    public static final class NothingToSpread extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        NothingToSpread(LandedCostId id, Money amount) {
            super("Landed cost [%s] is [%s]. Enter an amount above nothing; to lower one, take it back."
                    .formatted(id, amount));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** Goods and freight are in two currencies. */
    public static final class OtherCurrency extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        OtherCurrency(String delivery, Money cost, Money amount) {
            super("Delivery [%s] cost [%s] and the amount is [%s]. Convert the amount first."
                    .formatted(delivery, cost, amount));
        }
    }

    /** No line has anything to weigh it by. */
    public static final class NothingWeighs extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        NothingWeighs(Basis basis) {
            super("No line of these deliveries has a %s to spread by. Spread by something else, or choose deliveries."
                    .formatted(basis.words()));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** The deliveries are not known or all went back. */
    public static final class NoDelivery extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        NoDelivery(List<String> deliveries) {
            super("Deliveries %s have no goods in the books. Choose deliveries that were received."
                    .formatted(deliveries));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** It was never spread or is taken back already. */
    public static final class NothingToTakeBack extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        NothingToTakeBack(LandedCostId id) {
            super("Landed cost [%s] is not spread, or was taken back before. Nothing was changed.".formatted(id));
        }
    }

    /** A decision without a reason helps nobody later. */
    public static final class ReasonMissing extends LandedCostRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(LandedCostId id) {
            super("Landed cost [%s] is taken back without a reason. Write why.".formatted(id));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
