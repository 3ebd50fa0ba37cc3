package org.bandtrail.supplystock.custody;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A kit's settlement in one row.
 *
 * @param linesOut reels and batches of which something is out
 * @param settledAt when nothing was out any more, null while something is
 * @param reopened how many facts came although it was settled
 * @param reopenedAt when the books learnt of the last one, or null
 */
record Summary(
        String kit,
        long linesOut,
        @Nullable String settledAt,
        int reopened,
        @Nullable String reopenedAt) {

    static Summary of(String kit, Settling settling) {
        long out = settling.lines(kit).values().stream()
                .filter(line -> line.stillOut() != 0)
                .count();
        List<Settling.Chapter> story = settling.story(kit);
        boolean settled = !story.isEmpty() && story.getLast().settled();
        List<Settling.Chapter> reopened =
                story.stream().filter(chapter -> !chapter.settled()).toList();
        return new Summary(
                kit,
                out,
                settled ? story.getLast().happened().toString() : null,
                reopened.size(),
                reopened.isEmpty() ? null : reopened.getLast().recorded().toString());
    }
}
