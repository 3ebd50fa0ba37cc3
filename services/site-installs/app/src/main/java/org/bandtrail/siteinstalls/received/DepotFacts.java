package org.bandtrail.siteinstalls.received;

import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.siteinstalls.depotstock.DepotChanges;
import org.bandtrail.supplystock.contract.v1.DepotStockChanged;
import org.bandtrail.supplystock.contract.v1.HoldingLabelled;
import org.bandtrail.supplystock.contract.v1.HoldingReserved;
import org.springframework.stereotype.Component;

/** Puts down what supply-stock told of its depots. */
@Component
class DepotFacts {
    private final DepotChanges changes;

    DepotFacts(DepotChanges changes) {
        this.changes = changes;
    }

    /** More or less lies somewhere. */
    void hear(DepotStockChanged told) {
        var what = new DepotChanges.Holding(told.holding(), told.id());
        DepotStockChanged.Receipt receipt = told.receipt();
        if (receipt != null) {
            changes.received(
                    what,
                    new DepotChanges.Receipt(
                            receipt.materialCode(),
                            MaterialKind.valueOf(receipt.kind()),
                            receipt.quantity(),
                            told.happenedAt(),
                            receipt.costMinor(),
                            receipt.currency()));
        }
        told.changes()
                .forEach(each ->
                        changes.changed(what, new DepotId(each.depotId()), each.bin(), each.setAside(), each.change()));
    }

    /** A label says something. */
    void hear(HoldingLabelled told) {
        changes.labelled(new DepotChanges.Holding(told.holding(), told.id()), told.lot(), told.expiresOn());
    }

    /** A kit keeps something, or no longer. */
    void hear(HoldingReserved told) {
        changes.reserved(
                new DepotChanges.Holding(told.holding(), told.id()),
                told.kitId(),
                told.quantity(),
                told.until(),
                told.sequence());
    }
}
