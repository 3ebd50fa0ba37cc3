package org.bandtrail.supplystock.kitlists;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * From which reels the pieces of a list are cut. Part reels come first, then the oldest adhesive expiry, then the
 * oldest receipt, then the label; what is not known comes last. Never a reel that is set aside, expired or reserved.
 * Trees for which reels are wished come first and get them if all those reels are there, free and long enough; it is
 * said where they are not. All pieces of any other tree come from one reel, so it goes to the first reel in that order
 * with enough left (first fit); this is simple, not the least waste.
 *
 * @param picks reels with what is cut from each, in the order they are chosen
 * @param lacking trees no reel has enough left for
 * @param passedOver reels that may not be used, and why
 * @param otherwise trees that do not get the reels wished for them, and why
 */
public record ReelChoice(
        List<ReelPick> picks, List<Cut> lacking, List<PassedOver> passedOver, List<Otherwise> otherwise) {
    private static final Comparator<ReelOnShelf> ORDER = Comparator.comparing((ReelOnShelf reel) -> !reel.part())
            .thenComparing(ReelOnShelf::expires, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
            .thenComparing(ReelOnShelf::received, Comparator.nullsLast(Comparator.<Instant>naturalOrder()))
            .thenComparing(reel -> reel.reel().value());

    /**
     * One reel and what is cut from it.
     *
     * @param cuts in the order the crew walks
     */
    public record ReelPick(ReelOnShelf reel, List<Cut> cuts) {
        /** What is cut from it in all. */
        public Length taken() {
            return cuts.stream().map(Cut::whole).reduce(Length.ZERO, Length::plus);
        }
    }

    /** A reel that may not be used, with the reason in words. */
    public record PassedOver(ReelId reel, String why) {}

    /** A tree that is cut from other reels than was wished, with the reason in words. */
    public record Otherwise(TreeId tree, String why) {}

    /** Chooses where no reels are wished, see {@link #of(List, List, List, LocalDate)}. */
    public static ReelChoice of(List<Cut> wanted, List<ReelOnShelf> shelf, LocalDate day) {
        return of(wanted, List.of(), shelf, day);
    }

    /**
     * Chooses.
     *
     * @param wanted pieces by tree, in the order the crew walks
     * @param wishes reels for some of the trees, of the same kind of material
     * @param shelf reels of one material at one depot, in any order
     * @param day on which they are used
     */
    public static ReelChoice of(List<Cut> wanted, List<WishedReel> wishes, List<ReelOnShelf> shelf, LocalDate day) {
        List<PassedOver> passedOver = new ArrayList<>();
        Map<ReelOnShelf, Length> left = new LinkedHashMap<>();
        for (ReelOnShelf reel : shelf.stream().sorted(ORDER).toList()) {
            String why = unfit(reel, day);
            if (why == null) {
                left.put(reel, reel.there());
            } else {
                passedOver.add(new PassedOver(reel.reel(), why));
            }
        }
        ReelWishes wished = ReelWishes.follow(wanted, wishes, left, passedOver);
        Map<ReelOnShelf, List<Cut>> cuts = new LinkedHashMap<>();
        left.keySet().forEach(reel -> cuts.put(reel, new ArrayList<>()));
        List<Cut> lacking = new ArrayList<>();
        // Wished lengths are taken already; the others go where they fit, all in the order of the walk.
        for (Cut cut : wanted) {
            Map<ReelOnShelf, Cut> granted = wished.granted().get(cut.tree());
            ReelOnShelf reel = granted == null ? firstWith(left, cut.whole()) : null;
            if (granted != null) {
                granted.forEach((from, part) -> listed(cuts, from).add(part));
            } else if (reel == null) {
                lacking.add(cut);
            } else {
                left.merge(reel, cut.whole().negated(), Length::plus);
                listed(cuts, reel).add(cut);
            }
        }
        List<ReelPick> picks = cuts.entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(each -> new ReelPick(each.getKey(), List.copyOf(each.getValue())))
                .toList();
        return new ReelChoice(picks, List.copyOf(lacking), List.copyOf(passedOver), wished.otherwise());
    }

    private static List<Cut> listed(Map<ReelOnShelf, List<Cut>> cuts, ReelOnShelf reel) {
        return cuts.computeIfAbsent(reel, none -> new ArrayList<>());
    }

    private static @Nullable ReelOnShelf firstWith(Map<ReelOnShelf, Length> left, Length wanted) {
        return left.entrySet().stream()
                .filter(reel -> reel.getValue().compareTo(wanted) >= 0)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable String unfit(ReelOnShelf reel, LocalDate day) {
        LocalDate expires = reel.expires();
        if (reel.place().kind() == PlaceKind.SET_ASIDE) {
            return "set aside until somebody releases it";
        }
        if (expires != null && expires.isBefore(day)) {
            return "its adhesive was good until " + expires;
        }
        return reel.heldFor() == null ? null : "reserved for kit " + reel.heldFor();
    }
}
