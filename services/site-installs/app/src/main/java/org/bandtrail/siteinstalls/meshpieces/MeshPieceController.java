package org.bandtrail.siteinstalls.meshpieces;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Grade;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.Put;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceCommand.TakeBack;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Pieces of mesh over HTTP. */
@RestController
@Tag(name = "mesh pieces", description = "Guard mesh that is used again, by piece; the books of material stay by reel")
final class MeshPieceController {
    private static final int LONGEST_PAGE = 500;
    private static final String PLACE = "(crew|depot):[A-Z0-9][A-Z0-9/-]{0,79}";
    private final Work work;
    private final Commands commands;
    private final MeshPieces pieces;
    private final Clock clock;

    MeshPieceController(Work work, Commands commands, MeshPieces pieces, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.pieces = pieces;
        this.clock = clock;
    }

    @GetMapping("/mesh-pieces")
    @Operation(summary = "Pieces by identity; state free or hanging, wear good, worn, scrap or unseen")
    Rows list(
            @RequestParam(required = false) @Nullable String state,
            @RequestParam(required = false) @Nullable String wear,
            @RequestParam(required = false) @Nullable String place,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<MeshPieceView> rows = pieces.page(new MeshPieces.Asked(state, wear, place, q), after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().pieceId());
    }

    @GetMapping("/mesh-pieces/{pieceId}")
    @Operation(summary = "One piece with everything that happened to it, newest first")
    MeshPieceView.Whole one(@PathVariable MeshPieceId pieceId) {
        return pieces.whole(pieceId).orElseThrow(() -> new NoSuch("mesh piece", pieceId));
    }

    @PostMapping("/mesh-pieces")
    @Operation(
            summary = "Write down a piece that was found",
            description = "Mesh taken off a tree becomes a piece by itself. This moves no material in the books.")
    Kept found(@Valid @RequestBody Found request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Kept.class, () -> {
            MeshPieceId pieceId = request.pieceId() == null
                    ? MeshPieceId.made(request.commandId().toString(), request.reelId())
                    : request.pieceId();
            commands.send(new TakeBack(
                    pieceId,
                    request.reelId(),
                    request.length(),
                    null,
                    request.place(),
                    person.id(),
                    when(request.happenedAt())));
            if (request.wear() != null) {
                commands.send(
                        new Grade(pieceId, Wear.of(request.wear()), null, "", person.id(), when(request.happenedAt())));
            }
            return new Kept(pieceId);
        });
    }

    @PostMapping("/mesh-pieces/{pieceId}/grade")
    @Operation(summary = "Say how worn a piece is, and how long if it was measured")
    Kept grade(
            @PathVariable MeshPieceId pieceId,
            @Valid @RequestBody Look request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Kept.class, () -> {
            commands.send(new Grade(
                    pieceId,
                    Wear.of(request.wear()),
                    request.length(),
                    Objects.requireNonNullElse(request.note(), "").strip(),
                    person.id(),
                    when(request.happenedAt())));
            return new Kept(pieceId);
        });
    }

    @PostMapping("/mesh-pieces/{pieceId}/put")
    @Operation(summary = "Say where a piece lies: crew:<person> or depot:<depot>")
    Kept put(
            @PathVariable MeshPieceId pieceId,
            @Valid @RequestBody Placed request,
            @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Kept.class, () -> {
            commands.send(new Put(pieceId, request.place(), person.id(), when(request.happenedAt())));
            return new Kept(pieceId);
        });
    }

    private Occurred when(@Nullable Instant happened) {
        Instant now = clock.instant();
        return new Occurred(Objects.requireNonNullElse(happened, now), now);
    }

    record Found(
            @NotNull UUID commandId,
            @Nullable MeshPieceId pieceId,
            @NotNull ReelId reelId,
            @NotNull Length length,
            @Nullable String wear,
            @NotNull @Pattern(regexp = PLACE) String place,
            @Nullable Instant happenedAt) {}

    record Look(
            @NotNull UUID commandId,
            @NotNull String wear,
            @Nullable Length length,
            @Nullable @Size(max = 400) String note,
            @Nullable Instant happenedAt) {}

    record Placed(
            @NotNull UUID commandId,
            @NotNull @Pattern(regexp = PLACE) String place,
            @Nullable Instant happenedAt) {}

    /** The piece the entry is about. */
    record Kept(MeshPieceId pieceId) {}

    record Rows(List<MeshPieceView> rows, @Nullable String next) {}
}
