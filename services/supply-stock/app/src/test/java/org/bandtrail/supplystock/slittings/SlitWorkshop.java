package org.bandtrail.supplystock.slittings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.CostChange;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;

/**
 * A wide reel, its strips and its slittings, stepped on by the rules alone: what {@link Slitter} and {@link CostChanges}
 * send is decided here without a database. A step that is refused leaves everything as it was.
 *
 * @param charges minor units by account, of all reels together; the wide reel pays into {@code slit:} accounts
 */
record SlitWorkshop(
        Map<ReelId, Reel> reels, Map<String, SlittingEvent.Slit> done, Map<String, Long> charges, long costBought) {
    private static final ReelId WIDE = new ReelId("W-1");
    private static final MaterialCode ITEM = new MaterialCode("WIDE");
    private static final Place SHELF = Place.depot(new DepotId("NORTH"));
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    private static final long WIDTH = 600;

    /** What may happen. */
    enum Kind {
        SLIT,
        SLIT_ALL,
        USE_WIDE,
        USE_STRIP,
        LOAD,
        UNLOAD,
        DEARER_OR_CHEAPER
    }

    /** One random step; which of the numbers count depends on its kind. */
    record Step(Kind kind, long mm, int strips, long minor, int which) {}

    /** A wide reel just received: width and length in millimetres, cost in minor units. */
    static SlitWorkshop fresh(long width, long length, long minor) {
        if (width != WIDTH) {
            throw new IllegalArgumentException("The workshop slits reels of %d mm, not [%d].".formatted(WIDTH, width));
        }
        SlitWorkshop empty =
                new SlitWorkshop(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>(), minor);
        empty.tell(
                WIDE,
                new ReelCommand.Receive(
                        WIDE,
                        ITEM,
                        MaterialKind.TAPE,
                        Length.ofMm(length),
                        Money.of(minor, "USD"),
                        SHELF,
                        KEEPER,
                        NOW));
        return empty;
    }

    /** Everything after a step. */
    SlitWorkshop after(Step step) {
        long more = step.kind() == Kind.DEARER_OR_CHEAPER ? step.minor() : 0;
        SlitWorkshop next = new SlitWorkshop(
                new LinkedHashMap<>(reels), new LinkedHashMap<>(done), new LinkedHashMap<>(charges), costBought + more);
        try {
            next.take(step);
            return next;
        } catch (Refusal refused) {
            return this;
        }
    }

    private void take(Step step) {
        List<ReelId> known = List.copyOf(reels.keySet());
        ReelId any = known.get(step.which() % known.size());
        switch (step.kind()) {
            case SLIT -> slit(step, step.mm());
            case SLIT_ALL -> slit(step, Math.max(1, at(WIDE, SHELF)));
            case USE_WIDE -> use(WIDE, step.mm());
            case USE_STRIP -> use(known.getLast(), step.mm());
            case LOAD -> move(any, StockMove.LOADED, SHELF, Place.vehicle("V-1"));
            case UNLOAD -> move(any, StockMove.UNLOADED, Place.vehicle("V-1"), SHELF);
            case DEARER_OR_CHEAPER -> change(WIDE, CostChange.INVOICE_DIFFERENCE, step.minor());
        }
    }

    private void slit(Step step, long mm) {
        String id = "S-" + (done.size() + 1);
        List<Strip> strips = new ArrayList<>();
        long width = 0;
        for (int i = 1; i <= step.strips(); i++) {
            long each = 1 + (step.mm() * i) % 97;
            strips.add(new Strip(new ReelId(id + "-" + i), new MaterialCode("NARROW"), Length.ofMm(each)));
            width += each;
        }
        Length length = Length.ofMm(mm);
        done.put(id, (SlittingEvent.Slit) Slitting.UNKNOWN
                .decide(new SlittingCommand.Slit(
                        new SlittingId(id),
                        WIDE,
                        ITEM,
                        length,
                        Length.ofMm(WIDTH),
                        strips,
                        Length.ofMm(WIDTH - width),
                        KEEPER,
                        NOW))
                .getFirst());
        tell(WIDE, new ReelCommand.Slit(WIDE, id, SHELF, length, KEEPER, NOW));
        List<Long> costs = Slitting.costs(paidIn(id), strips);
        for (int i = 0; i < strips.size(); i++) {
            Strip strip = strips.get(i);
            tell(
                    strip.reelId(),
                    new ReelCommand.MakeBySlitting(
                            strip.reelId(),
                            strip.material(),
                            MaterialKind.TAPE,
                            length,
                            Money.of(costs.get(i), "USD"),
                            id,
                            SHELF,
                            KEEPER,
                            NOW));
        }
    }

    private void use(ReelId reel, long mm) {
        tell(
                reel,
                new ReelCommand.RecordFact(
                        reel,
                        "fact",
                        Place.crew(KEEPER),
                        Place.tree(new TreeId("T-1")),
                        Length.ofMm(mm),
                        new SiteId("S-01"),
                        KEEPER,
                        NOW));
    }

    private void move(ReelId reel, StockMove what, Place from, Place to) {
        tell(reel, new ReelCommand.Relocate(reel, what, from, to, null, null, null, KEEPER, NOW));
    }

    private void change(ReelId reel, CostChange why, long minor) {
        for (ReelEvent event :
                tell(reel, new ReelCommand.ChangeCost(reel, why, Money.of(minor, "USD"), "I-1", KEEPER, NOW))) {
            for (Charge charge : event.entry().charges()) {
                if (charge.account().startsWith(Charge.slit("")) && charge.minor() != 0) {
                    List<Strip> strips = Objects.requireNonNull(done.get(
                                    charge.account().substring(Charge.slit("").length())))
                            .strips();
                    List<Long> shares = Slitting.costs(charge.minor(), strips);
                    for (int i = 0; i < strips.size(); i++) {
                        if (shares.get(i) != 0) {
                            change(strips.get(i).reelId(), CostChange.FROM_WIDE_REEL, shares.get(i));
                        }
                    }
                }
            }
        }
    }

    private List<ReelEvent> tell(ReelId id, ReelCommand command) {
        Reel reel = reels.getOrDefault(id, Reel.UNKNOWN);
        List<ReelEvent> events = reel.decide(command);
        for (ReelEvent event : events) {
            reel = reel.evolve(event);
            event.entry().charges().forEach(charge -> charges.merge(charge.account(), charge.minor(), Long::sum));
        }
        reels.put(id, reel);
        return events;
    }

    private long at(ReelId id, Place place) {
        return Objects.requireNonNull(reels.get(id))
                .holding()
                .whereabouts()
                .balances()
                .getOrDefault(place, 0L);
    }

    /** Millimetres of the wide reel that went into a slitting. */
    long lengthLost(String slitting) {
        return at(WIDE, Place.slit(slitting));
    }

    /** Millimetres that came out of a slitting, strip by strip. */
    List<Long> lengthMade(String slitting) {
        return strips(slitting).stream()
                .map(strip -> -at(strip.reelId(), Place.slit(slitting)))
                .toList();
    }

    /** Minor units the wide reel paid into a slitting. */
    long paidIn(String slitting) {
        return charges.getOrDefault(Charge.slit(slitting), 0L);
    }

    /** Minor units the strips of a slitting cost together. */
    long stripsCost(String slitting) {
        return strips(slitting).stream()
                .mapToLong(strip -> Objects.requireNonNull(reels.get(strip.reelId()))
                        .holding()
                        .costMinor())
                .sum();
    }

    /** Minor units of all reels that are still in stock. */
    long costInStock() {
        return reels.values().stream()
                .mapToLong(reel -> reel.holding().costInStock())
                .sum();
    }

    /** Minor units that accounts other than slittings have paid. */
    long chargedToOthers() {
        return charges.entrySet().stream()
                .filter(each -> !each.getKey().startsWith(Charge.slit("")))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    private List<Strip> strips(String slitting) {
        return Objects.requireNonNull(done.get(slitting)).strips();
    }
}
