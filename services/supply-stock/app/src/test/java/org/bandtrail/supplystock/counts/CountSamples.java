package org.bandtrail.supplystock.counts;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** Words for tests about counts: a bin with two reels of 50 m for 18.00 and a batch of 400 pins for 12.00. */
final class CountSamples {
    static final CountId COUNT = new CountId("C-1");
    static final Place BIN = Place.parse("depot:NORTH/A-03");
    static final Place OTHER_BIN = Place.parse("depot:NORTH/B-01");
    static final Place NORTH = Place.parse("depot:NORTH");
    static final PersonId WREN = new PersonId("P-07");
    static final PersonId FINN = new PersonId("P-08");
    static final PersonId LEAD = new PersonId("P-01");
    static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    /** 100 mm, 5 pieces or 5 per mille; a second person from 5.00. */
    static final CountRules RULES = new CountRules(100, 5, 5, 500, CountRules.ValueBasis.USED, 800, 950, 30, 91, 365);

    private CountSamples() {}

    static SheetLine reel(String id, Place place, long book) {
        return reel(id, place, book, null, 0);
    }

    static SheetLine reel(String id, Place place, long book, @Nullable Place elsewhere, long there) {
        return new SheetLine("reel", id, place, "TAPE-127", "TAPE", book, 50_000, 1_800, "USD", elsewhere, there);
    }

    static SheetLine pins(String id, Place place, long book) {
        return new SheetLine("batch", id, place, "PIN-15", "FASTENER", book, 400, 1_200, "USD", null, 0);
    }

    static CountCommand open(Place scope, SheetLine... sheet) {
        return new CountCommand.Open(COUNT, scope, List.of(sheet), RULES, LEAD, NOW);
    }

    static CountCommand.Enter enter(SheetLine line, long quantity, PersonId by) {
        return enter(line, null, quantity, false, by);
    }

    static CountCommand.Enter enter(SheetLine line, @Nullable Place place, long quantity, boolean alone, PersonId by) {
        return new CountCommand.Enter(COUNT, line.holding(), line.id(), place, quantity, line, alone, by, NOW);
    }

    static CountCommand finish(boolean restNotThere) {
        return new CountCommand.Finish(COUNT, restNotThere, WREN, NOW);
    }

    static CountCommand because(SheetLine line, String reason) {
        return new CountCommand.Explain(COUNT, line.key(), reason, LEAD, NOW);
    }

    static CountCommand approve(PersonId by) {
        return new CountCommand.Approve(COUNT, by, NOW);
    }

    /** The count after these commands, all granted. */
    static Count after(CountCommand... commands) {
        Count count = Count.UNKNOWN;
        for (CountCommand command : commands) {
            count = next(count, command);
        }
        return count;
    }

    static Count next(Count count, CountCommand command) {
        Count next = count;
        for (CountEvent event : count.decide(command)) {
            next = next.evolve(event);
        }
        return next;
    }

    /** What an approval posts, in words. */
    static List<String> posted(Count count, PersonId by) {
        return ((CountEvent.Approved) count.decide(approve(by)).getFirst())
                .postings().stream()
                        .map(posting -> "%s %s %s->%s %d"
                                .formatted(
                                        posting.how(),
                                        posting.id(),
                                        posting.source(),
                                        posting.place(),
                                        posting.quantity()))
                        .toList();
    }
}
