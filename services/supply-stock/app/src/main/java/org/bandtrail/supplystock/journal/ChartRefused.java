package org.bandtrail.supplystock.journal;

import java.time.YearMonth;
import java.util.Set;
import org.bandtrail.eventstore.Refusal;

/** Why a wish about the organisation's accounts, or an export, is refused. */
public abstract sealed class ChartRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ChartRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** A closed month keeps its accounts. */
    public static final class AccountsOfClosedMonth extends ChartRefused {
        private static final long serialVersionUID = 1L;

        AccountsOfClosedMonth(YearMonth from, YearMonth closedThrough) {
            super("Accounts cannot begin in [%s]: months are closed through [%s]. Begin in [%s] or later."
                    .formatted(from, closedThrough, closedThrough.plusMonths(1)));
        }

        @Override
        public int status() {
            return 409;
        }
    }

    /** Not an account that anything here posts to. */
    public static final class AccountNotOurs extends ChartRefused {
        private static final long serialVersionUID = 1L;

        AccountNotOurs(String ours) {
            super("[%s] is none of our accounts. Use stock, stock:TAPE, stock:MESH, stock:FASTENER, site,"
                            .formatted(ours)
                    + " site:<site>, written-off, written-down, slit or supplier.");
        }
    }

    /** A number or name is missing. */
    public static final class AccountIncomplete extends ChartRefused {
        private static final long serialVersionUID = 1L;

        AccountIncomplete(ChartAccount account) {
            super("Account [%s] needs a number and a name; it has [%s] and [%s]. Write both."
                    .formatted(account.ours(), account.number(), account.name()));
        }
    }

    /** One account is one account. */
    public static final class AccountMappedTwice extends ChartRefused {
        private static final long serialVersionUID = 1L;

        AccountMappedTwice(String ours) {
            super("Account [%s] is mapped twice. Give it one number.".formatted(ours));
        }
    }

    /** Without the general ones something could be without an account. */
    public static final class AccountsMissing extends ChartRefused {
        private static final long serialVersionUID = 1L;

        AccountsMissing(Set<String> missing) {
            super("Accounts %s are not mapped. Give each a number and a name.".formatted(missing));
        }
    }

    /** A posting has no account. */
    public static final class PostingUnmapped extends ChartRefused {
        private static final long serialVersionUID = 1L;

        PostingUnmapped(YearMonth month, Set<String> unmapped) {
            super("The journal of [%s] cannot be exported: %s have no account then. Map the accounts from [%s] on."
                    .formatted(month, unmapped, month));
        }

        @Override
        public int status() {
            return 409;
        }
    }

    /** Debits are not credits. */
    public static final class JournalUnbalanced extends ChartRefused {
        private static final long serialVersionUID = 1L;

        JournalUnbalanced(YearMonth month, String currency, long difference) {
            super("The journal of [%s] does not balance: debits less credits are [%d] minor units of [%s]."
                            .formatted(month, difference, currency)
                    + " Nothing is exported. Look at the trial and tell whoever keeps this service.");
        }

        @Override
        public int status() {
            return 409;
        }
    }
}
