package org.bandtrail.frontdesk.neighbours.money;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about freight, duty, write-downs and tolerances. Millimetres or pieces, minor units. */
public final class LandedCosts {
    private LandedCosts() {}

    /** One amount that was spread. */
    public record Row(
            String landedCostId,
            String what,
            Money amount,
            String basis,
            String deliveries,
            @Nullable String invoiceId,
            String reference,
            String byPerson,
            Instant spreadAt,
            @Nullable String takenBackBecause) {}

    /** What one reel or batch bears. */
    public record Share(String deliveryId, int line, boolean reel, String id, Money amount) {}

    /** One amount with all its shares. */
    public record Whole(Row landedCost, List<Share> shares) {}

    /** What a line would bear. */
    public record LineShare(
            String deliveryId,
            int line,
            String materialCode,
            boolean onReels,
            long quantity,
            int count,
            Money cost,
            Money share) {}

    /** What every line, reel and batch would bear. */
    public record Preview(List<LineShare> lines, List<Share> shares) {}

    /** A delivery that can bear something. */
    public record Delivery(
            String deliveryId, String supplierId, LocalDate deliveredOn, long reelsAndBatches, Money cost) {}

    /** One write-down. */
    public record WriteDown(
            long position,
            String holding,
            String id,
            @Nullable String materialCode,
            Money amount,
            String reason,
            String byPerson,
            Instant happenedAt) {}

    /** What is left of a reel (mm) or batch (pieces), and what it stands at: the most a write-down can take. */
    public record Worth(String holding, String id, @Nullable String materialCode, long quantity, Money worth) {
        /** Whether it is a reel. */
        public boolean reel() {
            return holding.equals("reel");
        }
    }

    /** How much may differ. Per mille, millimetres, pieces, minor units. */
    public record Limits(
            long quantityPermille,
            long lengthMm,
            long pieces,
            long pricePermille,
            long priceMinor,
            long secondPersonFromMinor) {}

    /** Limits with where they come from; nobody and no day for the default. */
    public record Policy(
            Limits tolerances,
            String source,
            String reason,
            @Nullable String byPerson,
            @Nullable Instant setAt) {}
}
