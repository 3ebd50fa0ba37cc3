package org.bandtrail.inspections.published;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.contract.v1.MaterialMove;
import org.bandtrail.inspections.pieces.Move;

/** Translates moves into the contract; several pieces of one reel that go the same way are told as one length. */
final class PublishedMoves {
    private record Way(String material, String id, String source, String target) {}

    private PublishedMoves() {}

    static List<MaterialMove> of(List<Move> moves) {
        Map<Way, Long> quantities = new LinkedHashMap<>();
        for (Move move : moves) {
            String material = move.portion().kind().onReels() ? "reel" : "batch";
            Way way = new Way(material, move.portion().id(), move.source(), move.target());
            quantities.merge(way, move.portion().quantity(), Long::sum);
        }
        return quantities.entrySet().stream()
                .map(each -> new MaterialMove(
                        each.getKey().material(),
                        each.getKey().id(),
                        each.getValue(),
                        each.getKey().source(),
                        each.getKey().target()))
                .toList();
    }
}
