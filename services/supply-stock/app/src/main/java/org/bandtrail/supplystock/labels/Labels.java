package org.bandtrail.supplystock.labels;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.supplystock.batches.BatchBalances;
import org.bandtrail.supplystock.deliveries.Deliveries;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.deliveries.DeliveryRow;
import org.bandtrail.supplystock.deliveries.LotRow;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.items.ItemRow;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.reels.ReelBalance;
import org.bandtrail.supplystock.reels.ReelBalances;
import org.springframework.stereotype.Component;

/** Gathers what stands on the labels of a delivery, or of single reels and batches. */
@Component
class Labels {
    private final Lots lots;
    private final Deliveries deliveries;
    private final ReelBalances reels;
    private final BatchBalances batches;
    private final Items items;

    Labels(Lots lots, Deliveries deliveries, ReelBalances reels, BatchBalances batches, Items items) {
        this.lots = lots;
        this.deliveries = deliveries;
        this.reels = reels;
        this.batches = batches;
        this.items = items;
    }

    /** The labels of everything in a delivery that did not go back; empty if nobody recorded it. */
    List<LabelText> of(DeliveryId delivery) {
        List<LabelText> labels = new ArrayList<>();
        for (DeliveryRow.Line line :
                deliveries.one(delivery).map(DeliveryRow.Whole::lines).orElse(List.of())) {
            for (DeliveryRow.Piece piece : line.pieces()) {
                if (!piece.state().equals("sent back")) {
                    of(piece.holding(), piece.id()).ifPresent(labels::add);
                }
            }
        }
        return labels;
    }

    /** The label of a reel or batch; one that came without a recorded delivery has no lot on it. */
    Optional<LabelText> of(String holding, String id) {
        return lots.one(holding, id)
                .or(() -> holding.equals("reel") ? undelivered(id) : undeliveredBatch(id))
                .map(row -> {
                    Optional<ItemRow> item = items.one(new MaterialCode(row.materialCode()));
                    return LabelText.of(
                            row,
                            item.map(ItemRow::name).orElse(null),
                            item.map(ItemRow::widthMm).orElse(null));
                });
    }

    private Optional<LotRow> undelivered(String id) {
        return reels.one(id)
                .filter(reel -> reel.materialCode() != null && reel.receivedAt() != null)
                .map(Labels::row);
    }

    private static LotRow row(ReelBalance reel) {
        return new LotRow(
                "reel",
                reel.reelId(),
                String.valueOf(reel.materialCode()),
                String.valueOf(reel.kind()),
                reel.receivedMm(),
                null,
                null,
                null,
                "SOUND",
                "accepted",
                "",
                null,
                "",
                (reel.receivedAt() == null ? reel.lastMovedAt() : reel.receivedAt())
                        .atOffset(ZoneOffset.UTC)
                        .toLocalDate());
    }

    private Optional<LotRow> undeliveredBatch(String id) {
        return batches.one(id)
                .filter(batch -> batch.materialCode() != null)
                .map(batch -> new LotRow(
                        "batch",
                        batch.batchId(),
                        String.valueOf(batch.materialCode()),
                        "FASTENER",
                        batch.receivedPieces(),
                        null,
                        null,
                        null,
                        "SOUND",
                        "accepted",
                        "",
                        null,
                        "",
                        (batch.receivedAt() == null ? batch.lastMovedAt() : batch.receivedAt())
                                .atOffset(ZoneOffset.UTC)
                                .toLocalDate()));
    }
}
