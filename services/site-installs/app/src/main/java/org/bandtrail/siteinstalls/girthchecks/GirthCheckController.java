package org.bandtrail.siteinstalls.girthchecks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.species.SpeciesBook;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What to ask before a girth is stored, over HTTP. */
@RestController
@Tag(name = "trees", description = "The register of trunks and every girth measured on them")
final class GirthCheckController {
    private final Trees trees;
    private final CutPolicies policies;
    private final SpeciesBook book;
    private final Clock clock;

    GirthCheckController(Trees trees, CutPolicies policies, SpeciesBook book, Clock clock) {
        this.trees = trees;
        this.policies = policies;
        this.book = book;
        this.clock = clock;
    }

    @GetMapping("/trees/{treeId}/girths/check")
    @Operation(
            summary = "What to ask before a measurement is sent",
            description = "Stores nothing. Compares girth or dbh, text with its unit, with the last girth of the tree"
                    + " and with the largest known of its kind; names the classic slips of units.")
    Questions check(
            @PathVariable TreeId treeId,
            @RequestParam(required = false) @Nullable String girth,
            @RequestParam(required = false) @Nullable String dbh) {
        if ((girth == null) == (dbh == null)) {
            throw new IllegalArgumentException("Give either girth or dbh, the one that was measured.");
        }
        WrittenGirth written =
                girth == null ? WrittenGirth.ofDiameter(Objects.requireNonNull(dbh)) : WrittenGirth.ofGirth(girth);
        TreeView tree = trees.registered(List.of(treeId)).get(treeId);
        if (tree == null) {
            throw new NoSuch("tree", treeId);
        }
        LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
        return new Questions(
                GirthQuestions.about(written, tree, policies.on(today).values().girth(), book).stream()
                        .map(doubt -> new Question(
                                girth == null ? "dbh" : "girth", doubt.value(), doubt.perhaps(), doubt.message()))
                        .toList());
    }

    record Question(String field, String value, @Nullable String perhaps, String message) {}

    record Questions(List<Question> questions) {}
}
