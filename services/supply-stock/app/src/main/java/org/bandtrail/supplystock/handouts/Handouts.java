package org.bandtrail.supplystock.handouts;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.holds.HoldCommand;
import org.bandtrail.supplystock.recalls.Recalls;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.stereotype.Component;

/**
 * Sends a kit's commands to its reels and batches, inside one work: all lines or none. What each line really held is
 * read from the events, not from a read model that may lag. A reel reserved for another kit is refused.
 */
@Component
public class Handouts {
    private final Commands commands;
    private final FastenersOnShelf shelf;
    private final Recalls recalls;

    Handouts(Commands commands, FastenersOnShelf shelf, Recalls recalls) {
        this.commands = commands;
        this.shelf = shelf;
        this.recalls = recalls;
    }

    /**
     * Hands out a kit; call it inside a work.
     *
     * @return what the kit really holds, line by line
     */
    public List<KitLine> handOut(KitWish wish, PersonId by, Occurred occurred) {
        List<KitLine> lines = new ArrayList<>();
        for (ReelId reel : wish.reels()) {
            recalls.refuseIfRecalled("reel", reel.value());
            commands.send(new HoldCommand.TakeOut(HeldId.reel(reel), wish.kit(), 0, 0, by, occurred));
            var events = decided(new ReelCommand.HandOut(reel, wish.kit(), wish.depot(), wish.person(), by, occurred));
            for (Object event : events) {
                if (event instanceof ReelEvent.HandedOut out) {
                    lines.add(new KitLine(reel.value(), out.material(), out.kind(), moved(out.entry())));
                }
            }
        }
        for (OldestFirst.Pick pick : picks(wish, occurred)) {
            recalls.refuseIfRecalled("batch", pick.batch().value());
            commands.send(new HoldCommand.TakeOut(
                    HeldId.batch(pick.batch()),
                    wish.kit(),
                    pick.pieces().count(),
                    shelf.there(pick.batch(), wish.depot()),
                    by,
                    occurred));
            var events = decided(new BatchCommand.HandOut(
                    pick.batch(), wish.kit(), wish.depot(), wish.person(), pick.pieces(), by, occurred));
            for (Object event : events) {
                if (event instanceof BatchEvent.HandedOut out) {
                    lines.add(new KitLine(
                            pick.batch().value(), out.material(), MaterialKind.FASTENER, moved(out.entry())));
                }
            }
        }
        commands.send(
                new KitCommand.HandOut(wish.kit(), wish.depot(), wish.crew(), wish.person(), lines, by, occurred));
        return lines;
    }

    private List<OldestFirst.Pick> picks(KitWish wish, Occurred occurred) {
        List<OldestFirst.Pick> picks = new ArrayList<>(wish.batches());
        for (KitWish.Fasteners fasteners : wish.fasteners()) {
            OldestFirst.Choice choice = OldestFirst.choose(
                    fasteners.pieces(),
                    shelf.of(fasteners.materialCode(), wish.depot(), wish.kit(), occurred.recorded()));
            if (!choice.complete()) {
                throw new KitRefused.TooFewFasteners(
                        wish.depot(), fasteners.materialCode(), fasteners.pieces(), choice.missing());
            }
            picks.addAll(choice.picks());
        }
        return picks;
    }

    /** Takes back a measured reel; call it inside a work. */
    ReturnedLine takeBack(ReelCommand.Return back) {
        return line(
                back.reelId().value(),
                back.measured().mm(),
                decided(back).stream().map(event -> ((ReelEvent) event).entry()).toList());
    }

    /** Takes back counted pieces; call it inside a work. */
    ReturnedLine takeBack(BatchCommand.Return back) {
        return line(
                back.batchId().value(),
                back.counted().count(),
                decided(back).stream()
                        .map(event -> ((BatchEvent) event).entry())
                        .toList());
    }

    /** The books expected what came back plus what went missing, or less what was more than expected. */
    private static ReturnedLine line(String id, long found, List<Entry> entries) {
        long missing = 0;
        for (Entry entry : entries) {
            for (Move move : entry.moves()) {
                missing += move.target().kind() == PlaceKind.MISSING ? move.quantity() : 0;
                missing -= move.source().kind() == PlaceKind.MISSING ? move.quantity() : 0;
            }
        }
        return new ReturnedLine(id, found + missing, found, -missing);
    }

    private List<?> decided(Object command) {
        return commands.ask(command) instanceof List<?> events ? events : List.of();
    }

    private static long moved(Entry entry) {
        return entry.moves().stream().mapToLong(Move::quantity).sum();
    }

    /**
     * What a kit should hold.
     *
     * @param batches pieces of named batches
     * @param fasteners pieces of a material, taken from the oldest batches first
     */
    public record KitWish(
            KitId kit,
            DepotId depot,
            CrewId crew,
            PersonId person,
            List<ReelId> reels,
            List<OldestFirst.Pick> batches,
            List<Fasteners> fasteners) {
        /** So many pieces of a material, whichever batch they come from. */
        public record Fasteners(MaterialCode materialCode, Pieces pieces) {}
    }

    /**
     * @param expected what the books expected, millimetres or pieces
     * @param found what was measured or counted
     * @param difference found minus expected; negative is missing
     */
    record ReturnedLine(String id, long expected, long found, long difference) {}
}
