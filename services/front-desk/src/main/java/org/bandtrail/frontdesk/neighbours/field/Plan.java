package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What site-installs says of work plans. Lengths in mm. */
public final class Plan {
    private Plan() {}

    /** A plan in a list. */
    public record Row(
            String planId,
            String state,
            LocalDate day,
            LocalDate lastDay,
            String crewId,
            String depotId,
            List<String> sites,
            int trees,
            int bands) {

        /** Whether work goes on on this day. */
        public boolean on(LocalDate date) {
            return !date.isBefore(day) && !date.isAfter(lastDay);
        }
    }

    /** One plan with everything. */
    public record Whole(
            String planId,
            String state,
            LocalDate day,
            LocalDate lastDay,
            String crewId,
            String depotId,
            @Nullable String pest,
            @Nullable String programme,
            String device,
            @Nullable String tapeCode,
            @Nullable String meshCode,
            @Nullable String fastenerCode,
            @Nullable String otherCode,
            int policyVersion,
            @Nullable LocalDate putUpFrom,
            @Nullable LocalDate putUpUntil,
            String note,
            List<String> sites,
            int trees,
            int bands,
            List<Line> walk,
            List<Step> history,
            Review review) {

        /** Whether it can still be changed. */
        public boolean open() {
            return !state.equals("done") && !state.equals("called off");
        }

        /** Whether others count on it. */
        public boolean binding() {
            return state.equals("agreed") || state.equals("changed");
        }
    }

    /** A tree of the walk. */
    public record Line(
            int step,
            String treeId,
            String siteId,
            @Nullable String tag,
            @Nullable String species,
            long girthMm,
            @Nullable Long girthNowMm,
            int bands,
            long tapeMm,
            long meshMm,
            long fasteners,
            long others,
            long bandsUp,
            boolean gone) {

        /** Whether the trunk was measured again since. */
        public boolean measuredAnew() {
            return girthNowMm != null && girthNowMm != girthMm;
        }
    }

    /** One line of its history. */
    public record Step(String what, Instant happenedAt, String by, String note) {}

    /** What is to be said of a plan now. */
    public record Review(
            boolean suffices,
            List<Stock> stock,
            long minutes,
            long minutesThere,
            String hoursSource,
            List<String> warnings) {

        /** Hours of work, to a tenth. */
        public double hours() {
            return Math.round(minutes / 6.0) / 10.0;
        }

        /** Hours the crew has, to a tenth. */
        public double hoursThere() {
            return Math.round(minutesThere / 6.0) / 10.0;
        }
    }

    /** Whether a depot has enough of one material; mm, or pieces of fasteners. */
    public record Stock(
            String material,
            String kind,
            long needed,
            long pieces,
            long free,
            long plannedBefore,
            long missing,
            long longestPiece,
            long longestReel,
            boolean enough) {

        /** Whether there is enough in all, but no reel that reaches round the thickest tree. */
        public boolean tooShort() {
            return missing == 0 && !enough;
        }
    }

    /** A tree of a plan that is only looked at. */
    public record Tree(String treeId, long girth, int bands, long tape, long mesh, long fasteners) {}

    /** A plan that is only looked at. */
    public record Checked(List<Tree> trees, Review review) {}

    /** The plan that was made or changed. */
    public record Known(String planId) {}
}
