package org.bandtrail.supplystock.invoices;

import java.math.BigInteger;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * A line and where it stands.
 *
 * @param state open, held, settled, approved or not paid
 * @param reason why it is held, or how it was settled; null while nobody has said anything
 * @param payQuantity millimetres or pieces that are paid, if fewer than billed; else null
 * @param payNet what is paid for them before tax; else null
 */
record Standing(
        InvoiceLine line,
        State state,
        @Nullable String reason,
        @Nullable Long payQuantity,
        @Nullable Money payNet) {

    enum State {
        OPEN,
        HELD,
        SETTLED,
        APPROVED,
        NOT_PAID
    }

    static Standing open(InvoiceLine line) {
        return new Standing(line, State.OPEN, null, null, null);
    }

    /** The line billing something else: what was settled before was about other figures; a held line stays held. */
    Standing anew(InvoiceLine other) {
        return state == State.HELD ? new Standing(other, state, reason, null, null) : open(other);
    }

    Standing now(State next, @Nullable String why) {
        return new Standing(line, next, why, payQuantity, payNet);
    }

    Standing paying(@Nullable Long quantity, @Nullable Money net, String why) {
        return new Standing(line, State.SETTLED, why, quantity, net);
    }

    boolean payable() {
        return state == State.OPEN || state == State.SETTLED;
    }

    /** Net and tax of what is not paid of this line, minor units, tax in proportion and rounded toward nothing. */
    long unpaidMinor() {
        if (state == State.HELD || state == State.NOT_PAID) {
            return line.grossMinor();
        }
        if (payNet == null || line.net().minor() == 0) {
            return 0;
        }
        long net = line.net().minor() - payNet.minor();
        return net
                + BigInteger.valueOf(line.tax().minor())
                        .multiply(BigInteger.valueOf(net))
                        .divide(BigInteger.valueOf(line.net().minor()))
                        .longValueExact();
    }
}
