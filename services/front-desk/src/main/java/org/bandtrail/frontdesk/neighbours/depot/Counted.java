package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says about counts and about what does not add up. */
public final class Counted {
    private Counted() {}

    /**
     * One count.
     *
     * @param stage COUNTING, REVIEW, APPROVED or CANCELLED
     * @param open lines that wait for a figure
     * @param differing lines that differ, null while it is counted
     */
    public record Count(
            String countId,
            String place,
            String stage,
            int round,
            long lines,
            long open,
            @Nullable Long differing,
            String openedBy,
            Instant openedAt,
            @Nullable String closedBy,
            @Nullable Instant closedAt,
            @Nullable String cancelledBecause) {
        /** Whether figures are still entered. */
        public boolean counting() {
            return stage.equals("COUNTING");
        }

        /** How far it is, in words. */
        public String stageInWords() {
            return switch (stage) {
                case "COUNTING" -> round == 1 ? "being counted" : "being counted again";
                case "REVIEW" -> "counted, to be approved";
                case "APPROVED" -> "approved";
                default -> "cancelled";
            };
        }
    }

    /**
     * One line of a count; quantities in the unit.
     *
     * @param book null while it is counted
     * @param unit {@code mm} or {@code pieces}
     * @param elsewhere where the books have what was found here
     */
    public record Line(
            String holding,
            String id,
            String place,
            @Nullable String materialCode,
            @Nullable String kind,
            String unit,
            boolean onSheet,
            @Nullable Long book,
            @Nullable Long counted,
            @Nullable Long difference,
            @Nullable Money value,
            @Nullable String elsewhere,
            boolean toRecount,
            List<String> countedBy,
            @Nullable String reason) {
        /** Whether counted and books differ, as far as it may be known. */
        public boolean differs() {
            return difference != null && difference != 0;
        }
    }

    /**
     * A count with its lines.
     *
     * @param differences value of all differences without sign, by currency
     * @param secondPersonFromMinor from this value on somebody approves who did not count
     */
    public record Whole(Count count, List<Line> lines, List<Money> differences, long secondPersonFromMinor) {
        /** Whether somebody has to approve who did not count. */
        public boolean needsSecondPerson() {
            return differences.stream().anyMatch(sum -> sum.minor() > 0 && sum.minor() >= secondPersonFromMinor);
        }

        /** Whether this person entered a figure. */
        public boolean countedBy(String personId) {
            return lines.stream().anyMatch(line -> line.countedBy().contains(personId));
        }
    }

    /** An item at a place with when it is to be counted. */
    public record Due(
            String place,
            String materialCode,
            String kind,
            long holdings,
            String valueClass,
            int everyDays,
            @Nullable Instant lastCountedAt,
            @Nullable LocalDate dueOn,
            boolean due) {}

    /** The figures of the rules of counting. */
    public record Rules(
            long toleranceMm,
            long tolerancePieces,
            int tolerancePermille,
            long secondPersonFromMinor,
            String basis,
            int shareA,
            int shareB,
            int daysA,
            int daysB,
            int daysC) {}

    /** Rules with where they come from. */
    public record RulesInForce(
            Rules rules,
            String source,
            String reason,
            @Nullable String byPerson,
            @Nullable Instant setAt) {}

    /**
     * What does not add up.
     *
     * @param worth what the amount cost, without sign
     * @param waitsUntil the day on which it comes back, or null
     */
    public record Question(
            String what,
            String material,
            String id,
            String place,
            @Nullable String personId,
            long quantity,
            String unit,
            @Nullable Money worth,
            Instant since,
            long ageDays,
            @Nullable String lastHolder,
            String sentence,
            List<Likely> causes,
            @Nullable LocalDate waitsUntil,
            @Nullable String waitsBecause) {
        /** Whether it is about a reel. */
        public boolean reel() {
            return material.equals("reel");
        }
    }

    /** A likely cause with its evidence. */
    public record Likely(
            String kind,
            String words,
            int weight,
            String evidence,
            @Nullable String other,
            @Nullable String through,
            long quantity) {}
}
