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
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Trees over HTTP. */
@RestController
@Tag(name = "trees", description = "The register of trunks and every girth measured on them")
final class TreeController {
    private static final int LONGEST_PAGE = 500;
    private final Work work;
    private final Commands commands;
    private final Trees trees;
    private final Clock clock;

    TreeController(Work work, Commands commands, Trees trees, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.trees = trees;
        this.clock = clock;
    }

    @PostMapping("/trees")
    @Operation(
            summary = "Register a tree",
            description = "Without treeId the identity is made of site and tag. girth or dbh is text with its unit.")
    Known register(@Valid @RequestBody Register request, @Parameter(hidden = true) ActingPerson person) {
        return work.once(request.commandId(), request, Known.class, () -> {
            TreeId treeId =
                    Objects.requireNonNullElseGet(request.treeId(), () -> Tree.named(request.siteId(), request.tag()));
            commands.send(new RegisterTree(
                    treeId,
                    request.siteId(),
                    request.tag(),
                    Objects.requireNonNullElse(request.species(), ""),
                    request.speciesCode(),
                    position(request.lat(), request.lon()),
                    written(request.girth(), request.dbh()),
                    request.girthHeight(),
                    Objects.requireNonNullElse(request.note(), ""),
                    person.id(),
                    when(request.happenedAt())));
            return new Known(treeId);
        });
    }

    @PostMapping("/trees/{treeId}/girths")
    @Operation(
            summary = "Add a measurement to a tree",
            description = "Earlier measurements stay. girth or dbh is text with its unit, such as 1250 mm or 39.5 cm.")
    Known measure(
            @PathVariable TreeId treeId,
            @Valid @RequestBody Measure request,
            @Parameter(hidden = true) ActingPerson person) {
        WrittenGirth girth = written(request.girth(), request.dbh());
        if (girth == null) {
            throw new IllegalArgumentException("Neither girth nor dbh is given. Give what was measured.");
        }
        return work.once(request.commandId(), List.of(treeId.value(), request), Known.class, () -> {
            commands.send(
                    new MeasureGirth(treeId, girth, request.height(), null, person.id(), when(request.happenedAt())));
            return new Known(treeId);
        });
    }

    @GetMapping("/trees")
    @Operation(
            summary = "Trees by identity; site chooses one site, q a part of identity, tag, species or code",
            description = "only chooses: ALL, STANDING, GONE, UNMEASURED, NO_POSITION, NO_CODE, UNBANDED.")
    Rows list(
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable String q,
            @RequestParam(defaultValue = "ALL") TreeChoice only,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, LONGEST_PAGE);
        List<TreeView> rows = trees.page(only, site, q, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().treeId());
    }

    @GetMapping("/trees/{treeId}")
    @Operation(summary = "One tree with everything measured on it and its bands, newest first")
    TreeView.Whole one(@PathVariable TreeId treeId) {
        return trees.whole(treeId).orElseThrow(() -> new NoSuch("tree", treeId));
    }

    private Occurred when(@Nullable Instant happenedAt) {
        Instant now = clock.instant();
        return new Occurred(Objects.requireNonNullElse(happenedAt, now), now);
    }

    /** A position of two numbers, null if neither is given. */
    static @Nullable Point position(@Nullable BigDecimal lat, @Nullable BigDecimal lon) {
        if (lat == null && lon == null) {
            return null;
        }
        if (lat == null || lon == null) {
            throw new IllegalArgumentException(
                    "lat [%s] and lon [%s] belong together. Give both or neither.".formatted(lat, lon));
        }
        return Point.ofDegrees(lat, lon);
    }

    private static @Nullable WrittenGirth written(@Nullable String girth, @Nullable String dbh) {
        if (girth != null && dbh != null) {
            throw new IllegalArgumentException(
                    "girth [%s] and dbh [%s] are both given. Give the one that was measured.".formatted(girth, dbh));
        }
        if (girth != null) {
            return WrittenGirth.ofGirth(girth);
        }
        return dbh == null ? null : WrittenGirth.ofDiameter(dbh);
    }

    record Register(
            @NotNull UUID commandId,
            @Nullable TreeId treeId,
            @NotNull SiteId siteId,
            @NotNull String tag,
            @Nullable String species,
            @Nullable EppoCode speciesCode,
            @Nullable BigDecimal lat,
            @Nullable BigDecimal lon,
            @Nullable String girth,
            @Nullable String dbh,
            @Nullable Length girthHeight,
            @Nullable String note,
            @Nullable Instant happenedAt) {}

    record Measure(
            @NotNull UUID commandId,
            @Nullable String girth,
            @Nullable String dbh,
            @Nullable Length height,
            @Nullable Instant happenedAt) {}

    record Known(TreeId treeId) {}

    record Rows(List<TreeView> rows, @Nullable String next) {}
}
