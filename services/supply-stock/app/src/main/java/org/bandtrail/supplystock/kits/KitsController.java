package org.bandtrail.supplystock.kits;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.custody.KitSettled;
import org.bandtrail.supplystock.custody.SettlementReads;
import org.bandtrail.supplystock.handouts.KitLine;
import org.bandtrail.supplystock.kitlists.KitRules;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Kits over HTTP, from the tree list to the settlement. */
@RestController
@Tag(name = "kits", description = "What a crew carries for a list of trees: reserved, handed out, signed, settled")
final class KitsController {
    private final Work work;
    private final KitDesk desk;
    private final KitPlanning planning;
    private final KitLives lives;
    private final SettlementReads settlements;
    private final Clock clock;

    KitsController(
            Work work, KitDesk desk, KitPlanning planning, KitLives lives, SettlementReads settlements, Clock clock) {
        this.work = work;
        this.desk = desk;
        this.planning = planning;
        this.lives = lives;
        this.settlements = settlements;
        this.clock = clock;
    }

    @GetMapping("/kits/rule")
    @Operation(summary = "The usual rule from girth to lengths, with its source and reason")
    KitRules.Version rule() {
        return planning.usual(clock.instant());
    }

    @PostMapping("/kits/plan")
    @Operation(summary = "What a tree list takes and what would be chosen for it; reserves nothing")
    Planned plan(@RequestBody KitWish wish) {
        return Planned.of(planning.plan(wish, clock.instant()));
    }

    @PostMapping("/kits")
    @Operation(summary = "Choose and reserve a kit for a tree list: all of it or nothing")
    Planned reserve(@RequestBody KitWish wish, ActingPerson by) {
        return work.once(
                wish.commandId(),
                wish,
                Planned.class,
                () -> Planned.of(desk.reserve(wish, by.id(), occurred(wish.happenedAt()))));
    }

    @PostMapping("/kits/{kitId}/release")
    @Operation(summary = "Give a reserved kit free again")
    Done release(@PathVariable KitId kitId, @RequestBody Release request, ActingPerson by) {
        return work.once(request.commandId(), List.of(kitId.value(), request), Done.class, () -> {
            desk.release(kitId, request.reason(), by.id(), Occurred.at(clock.instant()));
            return new Done(kitId);
        });
    }

    @PostMapping("/kits/{kitId}/hand-out")
    @Operation(summary = "Hand a reserved kit out, all lines or none")
    HandedOut handOut(@PathVariable KitId kitId, @RequestBody HandOut request, ActingPerson by) {
        return work.once(
                request.commandId(),
                List.of(kitId.value(), request),
                HandedOut.class,
                () -> new HandedOut(
                        kitId, desk.handOut(kitId, request.personId(), by.id(), occurred(request.happenedAt()))));
    }

    @PostMapping("/kits/{kitId}/sign")
    @Operation(summary = "Sign for a kit that was handed out; whoever is signed in signs, and only the one who has it")
    Done sign(@PathVariable KitId kitId, @RequestBody Sign request, ActingPerson by) {
        return work.once(request.commandId(), List.of(kitId.value(), request), Done.class, () -> {
            desk.sign(kitId, by.id(), Occurred.at(clock.instant()));
            return new Done(kitId);
        });
    }

    @GetMapping("/kits")
    @Operation(summary = "Kits, newest first; by state: reserved, lapsed, released, out or settled")
    Rows list(
            @RequestParam(required = false) @Nullable String state,
            @RequestParam(required = false) @Nullable String person,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<KitLife> rows = lives.page(state, person, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().kitId());
    }

    @GetMapping("/kits/{kitId}")
    @Operation(summary = "One kit: its life, trees, what was chosen, and its settlement to the millimetre")
    Whole one(@PathVariable KitId kitId) {
        PickSheet sheet = sheet(kitId);
        return new Whole(sheet.kit(), sheet.walk(), sheet.collect(), settlements.kit(kitId.value()));
    }

    @GetMapping("/kits/{kitId}/pick-sheet.pdf")
    @Operation(summary = "The pick sheet: what to collect from which bin, and what to cut for which tree")
    ResponseEntity<byte[]> pdf(
            @PathVariable KitId kitId,
            @RequestParam(defaultValue = "SI") PickSheetPdf.Units units,
            @RequestParam(defaultValue = "") String name) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .body(new PickSheetPdf(units).of(sheet(kitId), name));
    }

    private PickSheet sheet(KitId kitId) {
        KitLife life = lives.one(kitId).orElseThrow(() -> new NoSuch("kit", kitId));
        return PickSheet.of(life, lives.trees(kitId), lives.picks(kitId));
    }

    private Occurred occurred(Instant happened) {
        return new Occurred(happened, clock.instant());
    }

    record Release(UUID commandId, @Nullable String reason) {}

    record HandOut(UUID commandId, @Nullable PersonId personId, Instant happenedAt) {}

    record Sign(UUID commandId) {}

    record Done(KitId kitId) {}

    record HandedOut(KitId kitId, List<KitLine> lines) {}

    record Rows(List<KitLife> rows, @Nullable String next) {}

    /**
     * @param walk trees in the order the crew walks
     * @param collect reels and batches in the order of the bins
     */
    record Whole(KitLife kit, List<PickSheet.Stop> walk, List<KitLife.Picked> collect, KitSettled settlement) {}
}
