package org.bandtrail.siteinstalls.policies;

import java.util.Arrays;
import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.girths.GirthLimits;

/**
 * The values of one version of the policy.
 *
 * @param tape how tape is cut
 * @param mesh how the guard is cut and what it must keep off
 * @param fasteners how many pins
 * @param height where the band hangs
 * @param girth which girths are believed
 * @param setup how many bands a trunk gets and how their guard is built
 * @param removeAfterDays days after fitting by which a band must be off, because it rots bark, 1 to 730
 * @param lateAfterDays days after which a fact counts as recorded late, 1 to 365
 */
public record CutLengths(
        TapeRule tape,
        MeshRule mesh,
        FastenerRule fasteners,
        HeightRule height,
        GirthLimits girth,
        SetupRule setup,
        int removeAfterDays,
        int lateAfterDays) {

    /**
     * Refuses values that cannot be meant.
     *
     * @throws IllegalArgumentException naming the value
     */
    public CutLengths {
        within("days until a band must be off", removeAfterDays, 1, 730);
        within("days until a fact is late", lateAfterDays, 1, 365);
    }

    /**
     * Tape = girth + overlap + 2 x tab.
     *
     * @param overlap where the ends meet, 0 to 1 m
     * @param tab folded end, at each end, 0 to 1 m
     * @param widest wider tape is asked about, above 0
     */
    public record TapeRule(Length overlap, Length tab, Length widest) {
        /** Refuses values out of range, naming the value. */
        public TapeRule {
            within("overlap of the tape in mm", overlap.mm(), 0, 1000);
            within("tab of the tape in mm", tab.mm(), 0, 1000);
            within("widest tape in mm", widest.mm(), 1, 1000);
        }
    }

    /**
     * Mesh = girth + extra.
     *
     * @param extra what lets the guard stand off, 1 mm to 2 m
     * @param leastStandOff nearer guards are asked about, 0 to 500 mm
     * @param widestOpening larger openings let animals through, 1 to 100 mm; 1/2 in is 13 in whole millimetres
     */
    public record MeshRule(Length extra, Length leastStandOff, Length widestOpening) {
        /** Refuses values out of range, naming the value. */
        public MeshRule {
            within("extra length of the mesh in mm", extra.mm(), 1, 2000);
            within("least stand-off in mm", leastStandOff.mm(), 0, 500);
            within("widest opening in mm", widestOpening.mm(), 1, 100);
        }
    }

    /**
     * One pin per started spacing of girth, and never fewer than the minimum.
     *
     * @param spacing girth per pin, 10 mm to 2 m
     * @param minimum the fewest, 1 to 100
     */
    public record FastenerRule(Length spacing, Pieces minimum) {
        /** Refuses values out of range, naming the value. */
        public FastenerRule {
            within("spacing of fasteners in mm", spacing.mm(), 10, 2000);
            within("minimum of fasteners", minimum.count(), 1, 100);
        }
    }

    /**
     * Height of the band above ground.
     *
     * @param usual what is proposed
     * @param lowest lower ones are asked about
     * @param highest higher ones are asked about, at most 10 m
     */
    public record HeightRule(Length usual, Length lowest, Length highest) {
        /** Refuses values out of order, naming the value. */
        public HeightRule {
            within("lowest height in mm", lowest.mm(), 0, usual.mm());
            within("highest height in mm", highest.mm(), usual.mm(), 10_000);
        }

        /** Tells whether the height needs no question. */
        public boolean usualEnough(Length measured) {
            return measured.compareTo(lowest) >= 0 && measured.compareTo(highest) <= 0;
        }
    }

    /** How a band is kept off from wildlife. */
    public enum GuardType {
        /** Wire mesh that stands off the tape. */
        MESH,
        /** Window screen pinned above and open below. */
        SCREEN,
        /** None; only with a reason. */
        NONE;

        /** The word for it, as people write it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * The guard of a word.
         *
         * @throws IllegalArgumentException naming the word
         */
        public static GuardType of(String word) {
            return Arrays.stream(values())
                    .filter(type -> type.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "Guard [%s] is not known. Use mesh, screen or none.".formatted(word)));
        }
    }

    /**
     * How many bands a trunk gets and how their guard is built.
     *
     * @param bandsPerTree how many hang on one trunk as planned, 1 to 9
     * @param bandWidth usual width of the tape, above 0, at most 1 m
     * @param guard what keeps wildlife off
     * @param guardWider by how much the guard is wider than the tape at least, 1 mm to 1 m
     * @param seam by how much the ends of the guard overlap, 0 to 500 mm
     * @param closedBelow whether the guard is closed below as well as above
     */
    public record SetupRule(
            int bandsPerTree, Length bandWidth, GuardType guard, Length guardWider, Length seam, boolean closedBelow) {
        /** Refuses values out of range, naming the value. */
        public SetupRule {
            within("bands on one trunk", bandsPerTree, 1, 9);
            within("usual width of the tape in mm", bandWidth.mm(), 1, 1000);
            within("width of the guard beyond the tape in mm", guardWider.mm(), 1, 1000);
            within("seam of the guard in mm", seam.mm(), 0, 500);
        }
    }

    private static void within(String name, long value, long least, long most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    "The %s [%d] must be from %d to %d.".formatted(name, value, least, most));
        }
    }
}
