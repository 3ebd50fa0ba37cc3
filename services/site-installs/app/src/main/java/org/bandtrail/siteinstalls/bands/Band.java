package org.bandtrail.siteinstalls.bands;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.bands.BandCommand.FitBand;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteReplacement;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteTakenDown;
import org.bandtrail.siteinstalls.bands.BandEvent.BandFitted;
import org.bandtrail.siteinstalls.bands.BandEvent.BandTakenDown;
import org.bandtrail.siteinstalls.bands.BandEvent.PiecesReplaced;
import org.jspecify.annotations.Nullable;

/**
 * One band. Facts may come in any order; of each kind the one that happened last counts.
 *
 * @param bandId null before the first fact
 * @param fitted when it was last fitted, null if that is not known (yet)
 * @param takenDown when it was last taken down, null if never
 * @param tape the newest tape, null if not known
 * @param mesh the newest mesh, null if not known
 */
public record Band(
        @Nullable BandId bandId,
        @Nullable Instant fitted,
        @Nullable Instant takenDown,
        @Nullable Hung tape,
        @Nullable Hung mesh) {
    /** Before the first fact. */
    public static final Band NONE = new Band(null, null, null, null, null);

    /**
     * A piece and since when it hangs.
     *
     * @param piece the piece, null if the guard was left off
     * @param since when it was put there
     */
    public record Hung(@Nullable Piece piece, Instant since) {}

    /** Whether the band hangs: it does until it is taken down, and again if it was fitted after that. */
    public boolean up() {
        return takenDown == null || (fitted != null && fitted.isAfter(takenDown));
    }

    /** Decides a command; facts are always accepted. */
    public List<BandEvent> decide(BandCommand command) {
        return switch (command) {
            case FitBand fit -> List.of(fitted(fit));
            case NoteReplacement note ->
                List.of(new PiecesReplaced(
                        note.bandId(),
                        note.visitId(),
                        note.treeId(),
                        note.siteId(),
                        note.tape(),
                        note.mesh(),
                        note.fasteners(),
                        note.by(),
                        note.when()));
            case NoteTakenDown note ->
                List.of(new BandTakenDown(
                        note.bandId(), note.teardownId(), note.treeId(), note.siteId(), note.by(), note.when()));
        };
    }

    private BandFitted fitted(FitBand fit) {
        Fitting fitting = fit.fitting();
        Books books = fit.books();
        Length height =
                fitting.height() == null ? books.policy().values().height().usual() : fitting.height();
        LocalDate day = LocalDate.ofInstant(fit.when().happened(), ZoneOffset.UTC);
        return new BandFitted(
                fit.bandId(),
                fitting.treeId(),
                fitting.siteId(),
                fitting.crewId(),
                fitting.personId(),
                BandCheck.girthOf(fitting, books),
                height,
                fitting.tape(),
                fitting.mesh(),
                fitting.fasteners(),
                day.plusDays(books.policy().values().removeAfterDays()),
                books.policy().version(),
                BandCheck.findings(fitting, books.with(fitted), fit.when()),
                fitting.details(),
                fit.by(),
                fit.when());
    }

    /** The band after the event; an event of another band is a damaged history and throws. */
    public Band evolve(BandEvent event) {
        if (bandId != null && !bandId.equals(event.bandId())) {
            throw new IllegalStateException("Band %s got an event of band %s.".formatted(bandId, event.bandId()));
        }
        Instant happened = event.when().happened();
        return switch (event) {
            case BandFitted fit ->
                new Band(
                        fit.bandId(),
                        later(fitted, happened),
                        takenDown,
                        newer(tape, new Hung(fit.tape(), happened)),
                        newer(mesh, new Hung(fit.mesh(), happened)));
            case PiecesReplaced replaced ->
                new Band(
                        replaced.bandId(),
                        fitted,
                        takenDown,
                        replaced.tape() == null ? tape : newer(tape, new Hung(replaced.tape(), happened)),
                        replaced.mesh() == null ? mesh : newer(mesh, new Hung(replaced.mesh(), happened)));
            case BandTakenDown down -> new Band(down.bandId(), fitted, later(takenDown, happened), tape, mesh);
        };
    }

    private static Instant later(@Nullable Instant known, Instant heard) {
        return known == null || heard.isAfter(known) ? heard : known;
    }

    private static Hung newer(@Nullable Hung known, Hung heard) {
        return known == null || !heard.since().isBefore(known.since()) ? heard : known;
    }
}
