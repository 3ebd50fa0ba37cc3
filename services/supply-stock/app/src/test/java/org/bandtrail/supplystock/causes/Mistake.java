package org.bandtrail.supplystock.causes;

import static org.bandtrail.supplystock.causes.FieldDay.*;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;

/** One mistake in what the books are told of a true day, and the cause the finder should name for it. */
enum Mistake {
    NONE(null),
    LAST_FACTS_STILL_ON_A_TELEPHONE(CauseKind.LATE_ENTRY),
    TAPE_OF_ONE_BAND_NOT_TOLD(CauseKind.LATE_ENTRY),
    TOLD_AFTER_IT_WAS_WRITTEN_OFF(CauseKind.LATE_ENTRY),
    HANDOUT_NOT_ENTERED(CauseKind.LATE_ENTRY),
    NUMBER_OF_THE_OTHER_REEL(CauseKind.WRONG_LABEL),
    NUMBER_OF_A_REEL_IN_THE_DEPOT(CauseKind.WRONG_LABEL),
    NUMBER_OF_NO_REEL(CauseKind.WRONG_LABEL),
    LENGTH_IN_A_SMALLER_UNIT(CauseKind.UNIT_MISTAKE),
    LENGTH_IN_A_LARGER_UNIT(CauseKind.UNIT_MISTAKE),
    ONE_PIECE_TOLD_TWICE(CauseKind.DOUBLED_FACT),
    LENGTHS_OF_TAPE_AND_MESH_EXCHANGED(CauseKind.SWAPPED_REEL),
    TAPE_TOLD_OF_THE_MESH_REEL(CauseKind.SWAPPED_REEL);

    private static final ReelId IN_THE_DEPOT = new ReelId("R-0014");
    private static final ReelId NO_REEL = new ReelId("R-0021");
    private static final double[] FACTORS = {12, 2.54, Math.PI, 10, 1000, 25.4};
    final @org.jspecify.annotations.Nullable CauseKind cause;

    Mistake(@org.jspecify.annotations.Nullable CauseKind cause) {
        this.cause = cause;
    }

    BooksInATest booksOf(FieldDay day, RandomGenerator random) {
        BooksInATest books = new BooksInATest();
        List<ReelCommand> told = new ArrayList<>(this == HANDOUT_NOT_ENTERED ? day.received() : day.handout());
        told.add(receive(IN_THE_DEPOT, MaterialKind.TAPE));
        int which = random.nextInt(day.bands().size());
        double factor = FACTORS[random.nextInt(FACTORS.length)];
        for (int i = 0; i < day.bands().size(); i++) {
            Band band = day.bands().get(i);
            told.addAll(i == which ? wrong(band, factor, random) : right(band, day));
        }
        if (this != HANDOUT_NOT_ENTERED) {
            told.addAll(day.measuredReturn());
        }
        if (this == TOLD_AFTER_IT_WAS_WRITTEN_OFF) {
            told.addAll(late(day.bands().get(which), day.back()));
        }
        told.forEach(command -> books.tell(reelOf(command), command));
        return books;
    }

    private List<ReelCommand> right(Band band, FieldDay day) {
        boolean tail = !band.at().isBefore(day.back().minus(Duration.ofMinutes(150)));
        return this == LAST_FACTS_STILL_ON_A_TELEPHONE && tail ? List.of() : List.of(tape(band), mesh(band));
    }

    private List<ReelCommand> wrong(Band band, double factor, RandomGenerator random) {
        return switch (this) {
            case NONE, HANDOUT_NOT_ENTERED -> List.of(tape(band), mesh(band));
            case LAST_FACTS_STILL_ON_A_TELEPHONE -> List.of();
            case TAPE_OF_ONE_BAND_NOT_TOLD, TOLD_AFTER_IT_WAS_WRITTEN_OFF -> List.of(mesh(band));
            case NUMBER_OF_THE_OTHER_REEL ->
                List.of(told(band, band.tapeReel().equals(TAPE) ? SECOND_TAPE : TAPE, band.tape()), mesh(band));
            case NUMBER_OF_A_REEL_IN_THE_DEPOT -> List.of(told(band, IN_THE_DEPOT, band.tape()), mesh(band));
            case NUMBER_OF_NO_REEL ->
                List.of(
                        // One exchange of neighbours away from R-0012, two slips away from R-0013.
                        told(band, band.tapeReel().equals(TAPE) ? NO_REEL : new ReelId("R-0031"), band.tape()),
                        mesh(band));
            case LENGTH_IN_A_SMALLER_UNIT ->
                List.of(told(band, band.tapeReel(), Math.max(1, Math.round(band.tape() / factor))), mesh(band));
            case LENGTH_IN_A_LARGER_UNIT ->
                List.of(told(band, band.tapeReel(), Math.round(band.tape() * factor)), mesh(band));
            case ONE_PIECE_TOLD_TWICE -> {
                Instant again = band.at().plus(Duration.ofMinutes(1 + random.nextInt(9)));
                yield List.of(tape(band), piece(band, band.tapeReel(), band.tape(), again, again), mesh(band));
            }
            case LENGTHS_OF_TAPE_AND_MESH_EXCHANGED ->
                List.of(told(band, band.tapeReel(), band.mesh()), told(band, MESH, band.tape()));
            case TAPE_TOLD_OF_THE_MESH_REEL -> List.of(told(band, MESH, band.tape()), mesh(band));
        };
    }

    /** The person's gap was written off, and days later the telephone found a signal. */
    private static List<ReelCommand> late(Band band, Instant back) {
        Instant writtenOff = back.plus(Duration.ofDays(1));
        return List.of(
                new ReelCommand.Settle(
                        band.tapeReel(), Place.missing(WREN), "not found", WREN, Occurred.at(writtenOff)),
                piece(band, band.tapeReel(), band.tape(), band.at(), back.plus(Duration.ofDays(3))));
    }

    private static ReelCommand told(Band band, ReelId reel, long mm) {
        return piece(band, reel, mm, band.at(), band.at());
    }

    private static ReelId reelOf(ReelCommand command) {
        return switch (command) {
            case ReelCommand.Receive receive -> receive.reelId();
            case ReelCommand.HandOut out -> out.reelId();
            case ReelCommand.RecordFact fact -> fact.reelId();
            case ReelCommand.Return back -> back.reelId();
            case ReelCommand.Settle settle -> settle.reelId();
            default -> throw new IllegalStateException("A field day has no " + command + Length.ZERO);
        };
    }
}
