package org.bandtrail.supplystock.custody;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * The settlement of a kit as people see it.
 *
 * @param settled whether nothing of it is out
 * @param lines its reels, then its batches
 * @param story how it was settled, and reopened by facts told late, oldest first
 */
public record KitSettled(String kitId, boolean settled, List<Line> lines, List<Turn> story) {

    /**
     * One reel in millimetres or one batch in pieces. Law: handedOut = fitted + returned + scrapped + missing + settled
     * + elsewhere + stillOut.
     *
     * @param holding reel or batch
     * @param unit mm or pieces
     * @param settled missing that was written off; negative if it was found
     */
    public record Line(
            String holding,
            String id,
            String personId,
            String unit,
            long handedOut,
            long fitted,
            long returned,
            long scrapped,
            long missing,
            long settled,
            long elsewhere,
            long stillOut) {}

    /**
     * One turn of the story.
     *
     * @param turn settled, or reopened
     * @param what the trade's word for the fact
     * @param quantity millimetres or pieces
     */
    public record Turn(
            String turn, String what, String id, long quantity, String place, Instant happenedAt, Instant recordedAt) {}

    static KitSettled of(String kitId, Settling settling) {
        List<Line> lines = settling.lines(kitId).entrySet().stream()
                .map(each -> line(each.getKey(), each.getValue()))
                .sorted(Comparator.comparing(Line::holding).reversed().thenComparing(Line::id))
                .toList();
        List<Turn> story = settling.story(kitId).stream()
                .map(chapter -> new Turn(
                        chapter.settled() ? "settled" : "reopened",
                        chapter.what(),
                        chapter.id(),
                        chapter.quantity(),
                        chapter.place(),
                        chapter.happened(),
                        chapter.recorded()))
                .toList();
        boolean settled = !story.isEmpty() && story.getLast().turn().equals("settled");
        return new KitSettled(kitId, settled, lines, story);
    }

    private static Line line(CustodyStep.Held held, Settlement is) {
        return new Line(
                held.holding(),
                held.id(),
                held.person(),
                held.reel() ? "mm" : "pieces",
                is.handedOut(),
                is.fitted(),
                is.returned(),
                is.scrapped(),
                is.missing(),
                is.settled(),
                is.elsewhere(),
                is.stillOut());
    }
}
