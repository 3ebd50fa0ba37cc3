package org.bandtrail.supplystock.setasides;

import java.time.Duration;
import java.util.Optional;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.deliveries.DeliveryCommand;
import org.bandtrail.supplystock.deliveries.DeliveryId;
import org.bandtrail.supplystock.deliveries.LotRow;
import org.bandtrail.supplystock.deliveries.Lots;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.recalls.Recalls;
import org.bandtrail.supplystock.relocations.Relocating;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Sets aside and releases, and tells the delivery that waited for it; call it inside a work. */
@Component
class AsideDesk {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final Commands commands;
    private final Relocating relocating;
    private final Recalls recalls;
    private final Lots lots;
    private final ObjectProvider<Projectors> projectors;

    AsideDesk(
            Commands commands,
            Relocating relocating,
            Recalls recalls,
            Lots lots,
            ObjectProvider<Projectors> projectors) {
        this.commands = commands;
        this.relocating = relocating;
        this.recalls = recalls;
        this.lots = lots;
        this.projectors = projectors;
    }

    SetAsideController.Done setAside(SetAsideController.Asked asked, PersonId by, Occurred now) {
        ReelId reel = asked.reelId();
        Place shelf = reel != null
                ? relocating.whereIs(reel, asked.depotId())
                : relocating.whereIs(asked.batch(), asked.depotId());
        Place aside = Place.setAside(asked.depotId());
        return new SetAsideController.Done(
                aside, moved(asked, StockMove.SET_ASIDE, shelf, aside, by, now), now.recorded());
    }

    SetAsideController.Done release(SetAsideController.Asked asked, PersonId by, Occurred now) {
        ReelId reel = asked.reelId();
        String holding = reel != null ? "reel" : "batch";
        String id = reel != null ? reel.value() : asked.batch().value();
        recalls.refuseIfRecalled(holding, id);
        String mark = asked.mark();
        Place into = mark == null || mark.isBlank() ? Place.depot(asked.depotId()) : Place.bin(asked.depotId(), mark);
        long quantity = moved(asked, StockMove.RELEASED, Place.setAside(asked.depotId()), into, by, now);
        tellDelivery(asked, holding, id, quantity, into, by, now);
        return new SetAsideController.Done(into, quantity, now.recorded());
    }

    private long moved(
            SetAsideController.Asked asked, StockMove what, Place source, Place target, PersonId by, Occurred now) {
        if (asked.reason().isBlank()) {
            throw new IllegalArgumentException("The reason is empty. Say why, so that the next person knows.");
        }
        var why = new Relocating.Why(what, null, asked.reason().strip());
        ReelId reel = asked.reelId();
        return reel != null
                ? relocating.reel(reel, source, target, why, by, now)
                : relocating.batch(asked.batch(), source, target, asked.pieces(), why, by, now);
    }

    /**
     * The balances are read after the batch has decided: whoever changes it in between wins the race, and this work is
     * done again.
     */
    private void tellDelivery(
            SetAsideController.Asked asked,
            String holding,
            String id,
            long released,
            Place into,
            PersonId by,
            Occurred now) {
        projectors.getObject().caughtUp(PATIENCE);
        boolean part = asked.reelId() == null
                && asked.pieces() != null
                && relocating.aside(new BatchId(id), asked.depotId()) > released;
        Optional<LotRow> delivered = lots.one(holding, id);
        delivered.ifPresent(from -> commands.send(new DeliveryCommand.NoteReleased(
                new DeliveryId(from.deliveryId()), holding + "/" + id, into, !part, by, now)));
    }
}
