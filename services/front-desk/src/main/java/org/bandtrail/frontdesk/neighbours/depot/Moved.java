package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about stock that a depot moves about. */
public final class Moved {
    private Moved() {}

    /** A transfer between depots or vehicles; places in text form. */
    public record Transfer(
            String transferId,
            String source,
            String target,
            String carrier,
            String state,
            Instant sentAt,
            String sentBy,
            @Nullable Instant endedAt,
            @Nullable String endedBy,
            @Nullable String reason,
            boolean oneHand,
            List<Line> lines) {
        /** Whether it is still on its way. */
        public boolean onItsWay() {
            return state.equals("on-its-way");
        }

        /** Whether less arrived than was sent. */
        public boolean isShort() {
            return lines.stream().anyMatch(line -> line.arrived() != null && line.arrived() < line.sent());
        }
    }

    /**
     * One reel or batch of a transfer.
     *
     * @param holding reel or batch
     * @param sent mm or pieces
     */
    public record Line(
            String holding,
            String id,
            @Nullable String materialCode,
            long sent,
            @Nullable Long arrived) {
        /** Whether it is a reel. */
        public boolean reel() {
            return holding.equals("reel");
        }
    }

    /**
     * Where something was put, and how much of it: mm of a reel, pieces of a batch.
     *
     * @param at when the books learnt of it; by this it can be taken back
     */
    public record Put(String place, long quantity, @Nullable Instant at) {}

    /**
     * What a vehicle took or gave.
     *
     * @param at when the books learnt of it; by this it can be taken back
     */
    public record Freight(String vehicleId, @Nullable Instant at) {}

    /** What was taken back and where it is again. */
    public record Back(List<Again> lines) {}

    /** One reel or batch that is again where it was. */
    public record Again(String id, String place) {}

    /** A bin and how much is in it. */
    public record Bin(String binId, String depotId, String words, long reels, long mm, long pieces) {
        /** What is written on it. */
        public String mark() {
            return binId.substring(binId.indexOf('/') + 1);
        }
    }

    /** Something in a bin: mm of a reel, pieces of a batch. */
    public record Content(
            String holding, String id, @Nullable String materialCode, long quantity) {}

    /** A bin with what lies in it. */
    public record WholeBin(String binId, String depotId, List<Content> contents) {}

    /** A vehicle and how much is on it. */
    public record Vehicle(String vehicleId, String name, String depotId, long reels, long mm, long pieces) {}

    /** A reel or batch that stands aside, and why. */
    public record Aside(
            String key,
            String holding,
            String id,
            @Nullable String materialCode,
            String depotId,
            long quantity,
            @Nullable String why,
            String by,
            Instant since) {}

    /** A wide reel that became strips; lengths and widths in mm, areas in square mm. */
    public record Slitting(
            String slittingId,
            String reelId,
            String materialCode,
            long lengthMm,
            long widthMm,
            long trimMm,
            Money cost,
            long areaInMm2,
            long areaOutMm2,
            Instant slitAt,
            String by,
            List<Made> strips) {}

    /** A strip with its share of the cost. */
    public record Made(String reelId, String materialCode, long widthMm, Money cost) {}

    /** Labels proposed for strips, in order across the width. */
    public record Labels(List<String> labels) {}
}
