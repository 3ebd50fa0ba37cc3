package org.bandtrail.inspections.bands;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.bands.BandCommand.HearOfFitting;
import org.bandtrail.inspections.bands.BandCommand.RecordOutcome;
import org.bandtrail.inspections.bands.BandCommand.RecordTeardown;
import org.bandtrail.inspections.bands.BandCommand.RecordVisit;
import org.bandtrail.inspections.bands.BandEvent.BycatchClosed;
import org.bandtrail.inspections.bands.BandEvent.FittingHeard;
import org.bandtrail.inspections.bands.BandEvent.PiecesReplaced;
import org.bandtrail.inspections.bands.BandEvent.PlacesSettled;
import org.bandtrail.inspections.bands.BandEvent.TakenDown;
import org.bandtrail.inspections.bands.BandEvent.Visited;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;

/**
 * The rules of one band. Facts are accepted in any order; where its pieces are follows from all of them, see
 * {@link org.bandtrail.inspections.pieces.Whereabouts}.
 *
 * @param pieces everything done to the pieces
 * @param visits every visit, by identity
 */
public record Band(PieceBook pieces, Map<String, Visited> visits) {
    /** A band nobody has told of. */
    public static final Band UNKNOWN = new Band(PieceBook.EMPTY, Map.of());

    /**
     * What becomes known by a command; nothing if it was known before.
     *
     * @throws BandRefused if the identity already names another fact
     */
    public List<BandEvent> decide(BandCommand command) {
        return switch (command) {
            case HearOfFitting heard -> hear(heard);
            case RecordVisit visit -> visit(visit);
            case RecordTeardown teardown -> tearDown(teardown);
            case RecordOutcome told -> List.of(closed(told));
        };
    }

    /** The band after an event. */
    public Band evolve(BandEvent event) {
        return switch (event) {
            case FittingHeard e -> with(fitting(e.fitting(), e.trunk(), e.putUp(), e.doer(), e.occurred()), e.doer());
            case Visited e -> new Band(pieces, plus(visits, e.visit(), e));
            case PiecesReplaced e -> with(e.replacement().fact(e.visit(), e.doer(), e.occurred()), e.doer());
            case TakenDown e -> with(e.how().fact(e.teardown(), e.doer(), e.occurred()), e.doer());
            case PlacesSettled _, BycatchClosed _ -> this;
        };
    }

    /** Where it hangs by the fitting told last, or null while no fitting is known. */
    public @Nullable Trunk trunk() {
        return pieces.trunk();
    }

    /** What hangs on the tree, as far as is known. */
    public List<Portion> hanging() {
        return pieces.hanging();
    }

    private List<BandEvent> hear(HearOfFitting heard) {
        PieceFact fact = fitting(heard.fitting(), heard.trunk(), heard.putUp(), heard.doer(), heard.occurred());
        if (pieces.knows(heard.band(), fact.id(), fact)) {
            return List.of();
        }
        List<BandEvent> events = new ArrayList<>();
        events.add(new FittingHeard(
                heard.band(), heard.fitting(), heard.trunk(), heard.putUp(), heard.doer(), heard.occurred()));
        events.addAll(pieces.settled(heard.band(), fact, heard.trunk(), pieces.learn(fact), heard.occurred()));
        return events;
    }

    private List<BandEvent> visit(RecordVisit told) {
        Replacement replacement = told.replacement();
        PieceFact fact = replacement == null || replacement.putUp().isEmpty()
                ? null
                : replacement.fact(told.visit(), told.doer(), told.occurred());
        boolean factKnown = pieces.knows(told.band(), told.visit(), fact);
        Visited visited = new Visited(
                told.band(),
                told.visit(),
                trunk(),
                told.look(),
                told.look().lowerBound(told.judging().fullFromPercent()),
                told.judging().policyVersion(),
                Remarks.on(this, told),
                told.doer(),
                told.occurred());
        if (alreadyTold(visited)) {
            return List.of();
        }
        List<BandEvent> events = new ArrayList<>();
        events.add(visited);
        if (replacement != null && fact != null && !factKnown) {
            Map<PieceFact, List<Move>> moves = pieces.learn(fact);
            List<Move> own = moves.getOrDefault(fact, List.of());
            events.add(new PiecesReplaced(
                    told.band(), told.visit(), trunk(), replacement, own, told.doer(), told.occurred()));
            events.addAll(pieces.settled(told.band(), fact, trunk(), moves, told.occurred()));
        }
        return events;
    }

    private List<BandEvent> tearDown(RecordTeardown told) {
        PieceFact fact = told.how().fact(told.teardown(), told.doer(), told.occurred());
        if (pieces.knows(told.band(), fact.id(), fact)) {
            return List.of();
        }
        Map<PieceFact, List<Move>> moves = pieces.learn(fact);
        List<BandEvent> events = new ArrayList<>();
        events.add(new TakenDown(
                told.band(),
                told.teardown(),
                trunk(),
                told.how(),
                moves.getOrDefault(fact, List.of()),
                Remarks.on(this, told),
                told.doer(),
                told.occurred()));
        events.addAll(pieces.settled(told.band(), fact, trunk(), moves, told.occurred()));
        return events;
    }

    private static BycatchClosed closed(RecordOutcome told) {
        return new BycatchClosed(
                told.band(),
                told.visit(),
                told.outcome(),
                told.handedTo(),
                told.handedAt(),
                told.doer(),
                told.occurred());
    }

    private boolean alreadyTold(Visited visited) {
        Visited known = visits.get(visited.visit());
        if (known == null) {
            return false;
        }
        boolean same = known.look().equals(visited.look())
                && known.doer().person().equals(visited.doer().person())
                && known.occurred().happened().equals(visited.occurred().happened());
        if (!same) {
            throw new BandRefused.IdentityTaken(visited.band(), visited.visit());
        }
        return true;
    }

    private static PieceFact fitting(String id, Trunk trunk, List<Portion> putUp, Doer doer, Occurred occurred) {
        return new PieceFact(id, PieceFact.Kind.FITTED, occurred.happened(), doer.person(), trunk, putUp, Map.of());
    }

    private Band with(PieceFact fact, Doer doer) {
        return new Band(pieces.with(fact, doer), visits);
    }

    private static Map<String, Visited> plus(Map<String, Visited> known, String id, Visited value) {
        Map<String, Visited> more = new HashMap<>(known);
        more.put(id, value);
        return Map.copyOf(more);
    }
}
