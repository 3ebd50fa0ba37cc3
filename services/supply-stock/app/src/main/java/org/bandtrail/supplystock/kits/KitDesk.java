package org.bandtrail.supplystock.kits;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.bandtrail.supplystock.handouts.Handouts;
import org.bandtrail.supplystock.handouts.KitCommand;
import org.bandtrail.supplystock.handouts.KitEvent;
import org.bandtrail.supplystock.handouts.KitLine;
import org.bandtrail.supplystock.handouts.KitRefused;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.holds.HoldCommand;
import org.bandtrail.supplystock.kitlists.Pick;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** The steps of a kit's life; each is called inside a work, so that a kit is reserved or handed out whole or not. */
@Component
class KitDesk {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final Commands commands;
    private final KitPlanning planning;
    private final Handouts handouts;
    private final KitLives lives;
    private final ObjectProvider<Projectors> projectors;

    KitDesk(
            Commands commands,
            KitPlanning planning,
            Handouts handouts,
            KitLives lives,
            ObjectProvider<Projectors> projectors) {
        this.commands = commands;
        this.planning = planning;
        this.handouts = handouts;
        this.lives = lives;
        this.projectors = projectors;
    }

    /**
     * Chooses and reserves. What was received or brought back a moment ago is waited for.
     *
     * @throws KitRefused.StockIsShort if the depot cannot give what the trees take
     */
    KitPlan reserve(KitWish wish, PersonId by, Occurred occurred) {
        projectors.getObject().caughtUp(PATIENCE);
        KitPlan plan = planning.plan(wish, occurred.recorded());
        if (!plan.lacking().isEmpty()) {
            throw new KitRefused.StockIsShort(
                    wish.depotId(),
                    plan.lacking().stream().map(KitPlan.Lacking::sentence).toList());
        }
        Instant until = Objects.requireNonNullElseGet(
                wish.until(),
                () -> occurred.recorded()
                        .plus(Duration.ofHours(
                                planning.usual(occurred.recorded()).reservedHours())));
        if (!until.isAfter(occurred.recorded())) {
            throw new IllegalArgumentException(
                    "The reservation would be over at [%s], before it begins. Give a later time.".formatted(until));
        }
        commands.send(new KitCommand.Reserve(
                wish.kitId(),
                wish.depotId(),
                wish.crewId(),
                wish.personId(),
                plan.trees(),
                plan.rule(),
                plan.picks(),
                until,
                by,
                occurred));
        for (Pick pick : sorted(plan.picks())) {
            long quantity = pick.kind().onReels() ? pick.there() : pick.quantity();
            commands.send(new HoldCommand.Place(
                    held(pick), wish.kitId(), wish.depotId(), quantity, pick.there(), until, by, occurred));
        }
        return plan;
    }

    /** Always in the same order, so that two kits that want the same reels do not wait for each other in a circle. */
    private static List<Pick> sorted(List<Pick> picks) {
        return picks.stream()
                .sorted(Comparator.comparing(pick -> held(pick).value()))
                .toList();
    }

    /** Gives a reserved kit free again. */
    void release(KitId kit, @Nullable String reason, PersonId by, Occurred occurred) {
        Object answer = commands.ask(new KitCommand.Release(kit, reason, by, occurred));
        for (Object event : answer instanceof List<?> events ? events : List.of()) {
            if (event instanceof KitEvent.Released released) {
                released.held().forEach(held -> commands.send(new HoldCommand.Release(held, kit, by, occurred)));
            }
        }
    }

    /**
     * Hands a reserved kit out as it was chosen.
     *
     * @param person who takes it, or null for the one it was reserved for
     */
    List<KitLine> handOut(KitId kit, @Nullable PersonId person, PersonId by, Occurred occurred) {
        KitLife life = lives.one(kit).orElseGet(() -> {
            projectors.getObject().caughtUp(PATIENCE);
            return lives.one(kit).orElseThrow(() -> new NoSuch("kit", kit));
        });
        List<ReelId> reels = new ArrayList<>();
        List<OldestFirst.Pick> batches = new ArrayList<>();
        for (KitLife.Picked pick : lives.picks(kit)) {
            if (pick.kind().onReels()) {
                reels.add(new ReelId(pick.id()));
            } else {
                batches.add(new OldestFirst.Pick(new BatchId(pick.id()), Pieces.of(pick.quantity())));
            }
        }
        return handouts.handOut(
                new Handouts.KitWish(
                        kit,
                        life.depot(),
                        life.crew(),
                        person == null ? life.person() : person,
                        reels,
                        batches,
                        List.of()),
                by,
                occurred);
    }

    /** Signs for a kit; the one who signs is the one who is signed in. */
    void sign(KitId kit, PersonId person, Occurred occurred) {
        commands.send(new KitCommand.Sign(kit, person, occurred));
    }

    private static HeldId held(Pick pick) {
        return pick.kind().onReels() ? HeldId.reel(new ReelId(pick.id())) : HeldId.batch(new BatchId(pick.id()));
    }
}
