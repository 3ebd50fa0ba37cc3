package org.bandtrail.siteinstalls.bands;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.bands.BandCommand.FitBand;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.NoteFitted;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Takes in fitted bands, one or a device's whole delivery. */
@Component
class BandIntake {
    private static final int MOST_RECORDS = 2_000;
    private final Work work;
    private final Commands commands;
    private final BandBooks books;
    private final Clock clock;
    private final JsonMapper json;
    private final Validator validator;

    BandIntake(Work work, Commands commands, BandBooks books, Clock clock, JsonMapper json, Validator validator) {
        this.work = work;
        this.commands = commands;
        this.books = books;
        this.clock = clock;
        this.json = json;
        this.validator = validator;
    }

    /** What a device collected; each record has the body of POST /bands. */
    record Sync(List<JsonNode> records) {}

    /** The answer to one fitting. */
    record Fitted(BandId bandId, List<BandView.Flag> flags) {}

    /** The answer to one record of a delivery: stored with its flags, or a problem in words. */
    record Result(
            @Nullable String commandId,
            @Nullable String bandId,
            List<BandView.Flag> flags,
            @Nullable String problem) {
        boolean stored() {
            return problem == null;
        }
    }

    /** The answers, in the order of the records. */
    record Results(int stored, List<Result> results) {}

    /** A record that could be read, or why not. */
    private record Read(
            JsonNode raw,
            @Nullable FitRequest request,
            @Nullable String problem) {}

    /** Stores one fitting, once by its command id. Runs inside a work. */
    Fitted store(FitRequest request, Books opened, PersonId by) {
        return work.once(request.commandId(), request, Fitted.class, () -> {
            Fitting fitting = request.fitting();
            Occurred when = new Occurred(request.happenedAt(), clock.instant());
            commands.send(new FitBand(fitting.bandId(), fitting, opened, by, when));
            // A girth that is not in the register yet has no tree to go to and stays on the band, which is flagged.
            if (fitting.girth() != null && opened.tree() != null) {
                commands.send(new MeasureGirth(
                        fitting.treeId(), fitting.girth(), fitting.height(), fitting.bandId(), by, when));
            }
            if (fitting.meshPiece() != null && fitting.mesh() != null) {
                commands.send(new NoteFitted(
                        fitting.meshPiece(),
                        fitting.mesh().reelId(),
                        fitting.mesh().length(),
                        fitting.bandId(),
                        fitting.treeId(),
                        by,
                        when));
            }
            return new Fitted(
                    fitting.bandId(),
                    BandCheck.findings(fitting, opened, when).stream()
                            .map(BandView.Flag::of)
                            .toList());
        });
    }

    /** Stores a delivery in one transaction. */
    Results sync(Sync sync, PersonId by) {
        if (sync.records().size() > MOST_RECORDS) {
            throw new IllegalArgumentException("A delivery of [%d] records is too long. Send at most %d at a time."
                    .formatted(sync.records().size(), MOST_RECORDS));
        }
        List<Read> read = sync.records().stream().map(this::read).toList();
        List<Result> results = work.inOneTransaction(() -> storeAll(read, by));
        return new Results((int) results.stream().filter(Result::stored).count(), results);
    }

    private List<Result> storeAll(List<Read> records, PersonId by) {
        List<FitRequest> readable = new ArrayList<>();
        for (Read each : records) {
            if (each.request() != null) {
                readable.add(each.request());
            }
        }
        work.claim(readable.stream()
                .map(request -> new Work.Stamp(request.commandId(), request))
                .toList());
        List<Books> opened = books.open(readable.stream().map(FitRequest::dated).toList());
        List<Result> results = new ArrayList<>();
        int next = 0;
        for (Read each : records) {
            results.add(
                    each.request() == null
                            ? result(each.raw(), List.of(), each.problem())
                            : storeOne(each.request(), each.raw(), opened.get(next++), by));
        }
        return results;
    }

    /** A command id used for other content refuses its own record only; nothing of it was written. */
    private Result storeOne(FitRequest request, JsonNode raw, Books opened, PersonId by) {
        try {
            return result(raw, store(request, opened, by).flags(), null);
        } catch (Refusal refused) {
            return result(raw, List.of(), refused.getMessage());
        }
    }

    private Read read(JsonNode record) {
        try {
            FitRequest request = json.treeToValue(record, FitRequest.class);
            Set<ConstraintViolation<FitRequest>> missing = validator.validate(request);
            if (!missing.isEmpty()) {
                String fields = missing.stream()
                        .map(violation -> violation.getPropertyPath() + " " + violation.getMessage())
                        .sorted()
                        .collect(Collectors.joining(", "));
                return new Read(record, null, fields + ".");
            }
            request.fitting(); // a girth or a length that cannot be read is told here, before anything is stored
            return new Read(record, request, null);
        } catch (JacksonException misfit) {
            return new Read(record, null, misfit.getOriginalMessage());
        } catch (IllegalArgumentException misfit) {
            return new Read(record, null, misfit.getMessage());
        }
    }

    private static Result result(JsonNode raw, List<BandView.Flag> flags, @Nullable String problem) {
        return new Result(
                raw.path("commandId").asString(null), raw.path("bandId").asString(null), flags, problem);
    }
}
