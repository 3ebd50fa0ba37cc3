package org.bandtrail.siteinstalls.trees;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.trees.TreeCommand.CorrectTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteFoundAgain;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteGone;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Corrections of the register over HTTP, and trees that are no more. */
@RestController
@Tag(name = "trees", description = "The register of trunks and every girth measured on them")
final class TreeChangesController {
    private final Work work;
    private final Commands commands;
    private final Clock clock;

    TreeChangesController(Work work, Commands commands, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.clock = clock;
    }

    @PostMapping("/trees/{treeId}/corrections")
    @Operation(
            summary = "Correct what the register says of a tree",
            description = "Send all of it as it ought to be; what is left out is then unknown. The old values stay in"
                    + " the tree's history. The identity never changes, even if the tag does.")
    Changed correct(
            @PathVariable TreeId treeId,
            @Valid @RequestBody Correction request,
            @Parameter(hidden = true) ActingPerson person) {
        TreeDetails details = request.details();
        return once(
                treeId,
                request.commandId(),
                request,
                () -> new CorrectTree(treeId, details, request.reason(), person.id(), Occurred.at(clock.instant())));
    }

    @PostMapping("/trees/{treeId}/gone")
    @Operation(summary = "Note that a tree was felled, has fallen, is dead or was not found")
    Changed gone(
            @PathVariable TreeId treeId,
            @Valid @RequestBody Gone request,
            @Parameter(hidden = true) ActingPerson person) {
        return once(
                treeId,
                request.commandId(),
                request,
                () -> new NoteGone(
                        treeId, request.how(), orEmpty(request.reason()), person.id(), when(request.happenedAt())));
    }

    @PostMapping("/trees/{treeId}/found-again")
    @Operation(summary = "Note that a tree which was said to be gone stands after all")
    Changed foundAgain(
            @PathVariable TreeId treeId,
            @Valid @RequestBody Found request,
            @Parameter(hidden = true) ActingPerson person) {
        return once(
                treeId,
                request.commandId(),
                request,
                () -> new NoteFoundAgain(treeId, orEmpty(request.reason()), person.id(), when(request.happenedAt())));
    }

    private Changed once(TreeId treeId, UUID commandId, Object request, Supplier<TreeCommand> command) {
        return work.once(commandId, List.of(treeId.value(), request), Changed.class, () -> {
            commands.send(command.get());
            return new Changed(treeId);
        });
    }

    private Occurred when(@Nullable Instant happenedAt) {
        Instant now = clock.instant();
        return new Occurred(Objects.requireNonNullElse(happenedAt, now), now);
    }

    private static String orEmpty(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }

    record Correction(
            @NotNull UUID commandId,
            @NotNull SiteId siteId,
            @NotNull String tag,
            @Nullable String species,
            @Nullable EppoCode speciesCode,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable String note,
            @NotNull String reason) {
        TreeDetails details() {
            return new TreeDetails(
                    siteId, tag, orEmpty(species), speciesCode, TreeController.position(lat, lon), orEmpty(note));
        }
    }

    record Gone(
            @NotNull UUID commandId,
            @NotNull GoneHow how,
            @Nullable String reason,
            @Nullable Instant happenedAt) {}

    record Found(
            @NotNull UUID commandId,
            @Nullable String reason,
            @Nullable Instant happenedAt) {}

    record Changed(TreeId treeId) {}
}
