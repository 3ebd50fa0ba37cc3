package org.bandtrail.siteinstalls.imports;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.siteinstalls.trees.TreeRegistration;
import org.bandtrail.siteinstalls.trees.Trees;
import org.springframework.stereotype.Component;

/**
 * Stores the ready rows of previews. A preview of one page is stored at once. A larger one is begun, which is refused
 * if any of its trees is registered, and then goes on page by page, each page a transaction of its own: the projections
 * follow while it runs, and after a stop it goes on with the page that was not finished. What somebody else registers
 * while it runs is left out and named, because by then the file was found good.
 */
@Component
class ImportStoring {
    private final Work work;
    private final Trees trees;
    private final TreeRegistration registration;
    private final KeptPreviews kept;
    private final Clock clock;

    ImportStoring(Work work, Trees trees, TreeRegistration registration, KeptPreviews kept, Clock clock) {
        this.work = work;
        this.trees = trees;
        this.registration = registration;
        this.kept = kept;
        this.clock = clock;
    }

    /**
     * Begins to store, inside a work; a single page is stored with it.
     *
     * @return how it stands
     * @throws ImportRefused if the preview is unknown, begun or stored before, not all ready, or the register has
     *     changed
     */
    KeptPreview begin(String importId, boolean onlyReady, PersonId by) {
        KeptPreview preview = kept.locked(importId).orElseThrow(() -> new ImportRefused.Unknown(importId));
        preview.requireStorable(onlyReady);
        int row = 0;
        for (List<ReadyTree> page = kept.rowsAfter(importId, row);
                !page.isEmpty();
                page = kept.rowsAfter(importId, row)) {
            preview.requireNew(taken(page));
            row = page.getLast().row();
        }
        kept.begin(importId, by, clock.instant());
        if (preview.ready() <= KeptPreviews.PAGE) {
            storePage(importId);
        }
        return kept.one(importId).orElseThrow(() -> new ImportRefused.Unknown(importId));
    }

    /** Stores one page of an import that was begun and is not finished; false if there is none. */
    boolean storeNextPage() {
        return work.inOneTransaction(() -> {
            Optional<String> unfinished = kept.unfinished();
            unfinished.ifPresent(this::storePage);
            return unfinished.isPresent();
        });
    }

    private void storePage(String importId) {
        KeptPreviews.Begun begun = kept.begun(importId);
        List<ReadyTree> page = kept.rowsAfter(importId, begun.doneRow());
        Set<TreeId> taken = taken(page);
        Instant now = clock.instant();
        registration.register(page.stream()
                .filter(row -> !taken.contains(row.treeId()))
                .map(row -> command(row, begun.by(), now))
                .toList());
        List<TreeId> leftOut = new ArrayList<>(taken);
        leftOut.sort(Comparator.comparing(TreeId::value));
        kept.advance(importId, page, leftOut);
    }

    private Set<TreeId> taken(List<ReadyTree> page) {
        Set<TreeId> taken = new TreeSet<>(Comparator.comparing(TreeId::value));
        taken.addAll(
                trees.registered(page.stream().map(ReadyTree::treeId).toList()).keySet());
        return taken;
    }

    private static RegisterTree command(ReadyTree row, PersonId by, Instant now) {
        Instant measured = row.measured() == null
                ? now
                : row.measured().atStartOfDay(ZoneOffset.UTC).toInstant();
        return new RegisterTree(
                row.treeId(),
                row.siteId(),
                row.tag(),
                row.species(),
                row.more().speciesCode(),
                row.more().position(),
                row.girth(),
                row.more().girthHeight(),
                row.more().note(),
                by,
                new Occurred(measured, now));
    }
}
