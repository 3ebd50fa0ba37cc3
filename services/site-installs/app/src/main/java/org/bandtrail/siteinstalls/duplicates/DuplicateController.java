package org.bandtrail.siteinstalls.duplicates;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Duplicates over HTTP. */
@RestController
@Tag(name = "tree duplicates", description = "Trees that stand in the register twice, and what was decided of them")
final class DuplicateController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final Duplicates duplicates;
    private final PairDecisions decisions;
    private final Deciding deciding;
    private final DuplicateRules rules;

    DuplicateController(
            Work work, Duplicates duplicates, PairDecisions decisions, Deciding deciding, DuplicateRules rules) {
        this.work = work;
        this.duplicates = duplicates;
        this.decisions = decisions;
        this.deciding = deciding;
        this.rules = rules;
    }

    @GetMapping("/tree-duplicates")
    @Operation(
            summary = "Pairs of trees that look like one and of which nothing is decided",
            description = "Found by the same tag at a site, or by their places with girths that agree; rules says how"
                    + " close and how alike. site chooses pairs with a tree at that site.")
    Pairs pairs(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        Duplicates.Page page = duplicates.page(
                site == null || site.isEmpty() ? null : site, PairKey.parse(after), Math.clamp(limit, 1, LONGEST_PAGE));
        return new Pairs(page.rows(), page.next() == null ? null : page.next().toString(), rules);
    }

    @GetMapping("/tree-duplicates/decisions")
    @Operation(summary = "What was decided of pairs and still holds, the latest first")
    Decided decided(
            @RequestParam(required = false) @Nullable Long after, @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<PairDecision> rows = decisions.page(after, size);
        return new Decided(
                rows, rows.size() < size ? null : Long.toString(rows.getLast().number()));
    }

    @PostMapping("/tree-duplicates/merge")
    @Operation(
            summary = "Say that two are one tree: one is kept, the other merged into it",
            description = "Nothing is lost: the bands, girths and host checks of the merged tree show at the kept one,"
                    + " and what is told for the merged tree later is kept and shown there too.")
    Done merge(@Valid @RequestBody Merge request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Done.class, () -> {
            deciding.merge(request.kept(), request.merged(), request.reason(), person.id());
            return new Done(request.kept(), request.merged());
        });
    }

    @PostMapping("/tree-duplicates/apart")
    @Operation(summary = "Say that two are not the same tree; the pair does not come again")
    Done apart(@Valid @RequestBody Pair request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of("apart", request), Done.class, () -> {
            deciding.apart(request.first(), request.second(), request.reason(), person.id());
            return new Done(request.first(), request.second());
        });
    }

    @PostMapping("/tree-duplicates/undo")
    @Operation(summary = "Take back what was decided of two trees last")
    Done undo(@Valid @RequestBody Pair request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), List.of("undo", request), Done.class, () -> {
            deciding.undo(request.first(), request.second(), request.reason(), person.id());
            return new Done(request.first(), request.second());
        });
    }

    record Merge(
            @NotNull UUID commandId,
            @NotNull TreeId kept,
            @NotNull TreeId merged,
            @NotNull String reason) {}

    record Pair(
            @NotNull UUID commandId,
            @NotNull TreeId first,
            @NotNull TreeId second,
            @NotNull String reason) {}

    record Done(TreeId first, TreeId second) {}

    record Pairs(List<DuplicatePair> rows, @Nullable String next, DuplicateRules rules) {}

    record Decided(List<PairDecision> rows, @Nullable String next) {}
}
