package org.bandtrail.supplystock.kitlists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.TreeId;

/**
 * What becomes of wished reels.
 *
 * @param granted for each tree whose wishes are followed, what is cut from which reel
 * @param otherwise the other trees with wishes, and why
 */
record ReelWishes(Map<TreeId, Map<ReelOnShelf, Cut>> granted, List<ReelChoice.Otherwise> otherwise) {

    /**
     * Follows the wishes that can be followed, tree by tree in the order of the walk.
     *
     * @param left what is left of each reel that may be used; what is granted is taken off it
     * @param passedOver reels that may not be used, for the reason
     */
    static ReelWishes follow(
            List<Cut> wanted,
            List<WishedReel> wishes,
            Map<ReelOnShelf, Length> left,
            List<ReelChoice.PassedOver> passedOver) {
        Map<TreeId, Map<ReelOnShelf, Cut>> granted = new LinkedHashMap<>();
        List<ReelChoice.Otherwise> otherwise = new ArrayList<>();
        for (Cut cut : wanted) {
            List<WishedReel> own = wishes.stream()
                    .filter(wish -> wish.treeId().equals(cut.tree()))
                    .toList();
            if (own.isEmpty()) {
                continue;
            }
            Map<ReelOnShelf, Cut> parts = new LinkedHashMap<>();
            String why = why(cut, own, left, passedOver, parts);
            if (why.isEmpty()) {
                parts.forEach((reel, part) -> left.merge(reel, part.whole().negated(), Length::plus));
                granted.put(cut.tree(), parts);
            } else {
                otherwise.add(new ReelChoice.Otherwise(cut.tree(), why));
            }
        }
        return new ReelWishes(granted, List.copyOf(otherwise));
    }

    /** Why the wishes of a tree cannot be followed, empty if they can; then parts holds what comes from where. */
    private static String why(
            Cut cut,
            List<WishedReel> own,
            Map<ReelOnShelf, Length> left,
            List<ReelChoice.PassedOver> passedOver,
            Map<ReelOnShelf, Cut> parts) {
        int pieces = own.stream().mapToInt(wish -> wish.of(cut.pieces())).sum();
        if (pieces != cut.pieces()) {
            return "reels are wished for %d of its %d pieces".formatted(pieces, cut.pieces());
        }
        for (WishedReel wish : own) {
            ReelOnShelf reel = left.keySet().stream()
                    .filter(each -> each.reel().equals(wish.reelId()))
                    .findFirst()
                    .orElse(null);
            if (reel == null) {
                return passedOver.stream()
                        .filter(each -> each.reel().equals(wish.reelId()))
                        .findFirst()
                        .map(each -> "reel %s: %s".formatted(each.reel(), each.why()))
                        .orElse("reel %s is not there".formatted(wish.reelId()));
            }
            Cut before = parts.get(reel);
            int all = wish.of(cut.pieces()) + (before == null ? 0 : before.pieces());
            Cut part = new Cut(cut.tree(), all, cut.each());
            Length rest = Objects.requireNonNull(left.get(reel));
            if (rest.compareTo(part.whole()) < 0) {
                return "reel %s has %s left for it, not %s".formatted(wish.reelId(), rest, part.whole());
            }
            parts.put(reel, part);
        }
        return "";
    }
}
