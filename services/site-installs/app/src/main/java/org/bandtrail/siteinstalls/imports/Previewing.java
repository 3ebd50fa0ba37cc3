package org.bandtrail.siteinstalls.imports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.GirthDoubt;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.jspecify.annotations.Nullable;

/** Looks through a file once: what is ready, what is wrong, what is doubted. Stores nothing. */
public final class Previewing {
    private static final int PAGE = 5_000;

    private final Mapping mapping;
    private final Register register;
    private final GirthLimits limits;
    private final Map<TreeId, Integer> firstRows = new HashMap<>();
    private final Map<SiteId, Boolean> sites = new HashMap<>();
    private final List<ReadyTree> ready = new ArrayList<>();
    private final List<ImportProblem> problems = new ArrayList<>();
    private final List<ImportQuestion> questions = new ArrayList<>();
    private List<ReadyTree> page = new ArrayList<>();

    private Previewing(Mapping mapping, Register register, GirthLimits limits) {
        this.mapping = mapping;
        this.register = register;
        this.limits = limits;
    }

    /**
     * Looks through a file.
     *
     * @throws ImportRefused if the file is no table or lacks a mapped column
     */
    public static Preview of(byte[] file, Mapping mapping, Register register, GirthLimits limits) {
        return new Previewing(mapping, register, limits).look(InventoryFile.open(file));
    }

    private Preview look(InventoryFile file) {
        RowReader reader = new RowReader(mapping, file.columns(), problems::add);
        int rows = 0;
        int selected = 0;
        while (file.more()) {
            InventoryFile.Row row = file.next();
            if (row.blank()) {
                continue;
            }
            rows++;
            if (reader.selects(row)) {
                selected++;
                take(reader.read(row));
            }
        }
        finishPage();
        problems.sort(Comparator.comparingInt(ImportProblem::row));
        return new Preview(file.columns(), rows, selected, ready, problems, questions, file.notes());
    }

    private void take(@Nullable ReadyTree tree) {
        if (tree == null || !siteKnown(tree) || !firstOfItsTag(tree)) {
            return;
        }
        page.add(tree);
        if (page.size() == PAGE) {
            finishPage();
        }
    }

    private boolean siteKnown(ReadyTree tree) {
        boolean known = sites.computeIfAbsent(tree.siteId(), register::hasSite);
        if (!known) {
            String column = mapping.siteColumn() == null ? "" : mapping.siteColumn();
            problems.add(new ImportProblem(
                    tree.row(),
                    column,
                    tree.siteId().value(),
                    "Site %s is not registered.".formatted(tree.siteId()),
                    "Register the site first, or correct its name."));
        }
        return known;
    }

    private boolean firstOfItsTag(ReadyTree tree) {
        Integer first = firstRows.putIfAbsent(tree.treeId(), tree.row());
        if (first != null) {
            problems.add(new ImportProblem(
                    tree.row(),
                    mapping.tagColumn(),
                    tree.tag(),
                    "Row %d has this tag at the same site already.".formatted(first),
                    "Two trees cannot share a tag; check both rows."));
        }
        return first == null;
    }

    /** Asks the register about a whole page at once. */
    private void finishPage() {
        Set<TreeId> taken = new HashSet<>(
                register.taken(page.stream().map(ReadyTree::treeId).toList()));
        for (ReadyTree tree : page) {
            if (taken.contains(tree.treeId())) {
                problems.add(new ImportProblem(
                        tree.row(),
                        mapping.tagColumn(),
                        tree.tag(),
                        "Tree %s is registered already.".formatted(tree.treeId()),
                        "Leave the row out; add a new girth to the tree itself."));
            } else {
                ready.add(tree);
                GirthDoubt.about(tree.girth(), null, limits).ifPresent(doubt -> ask(tree, doubt));
            }
        }
        page = new ArrayList<>();
    }

    private void ask(ReadyTree tree, GirthDoubt doubt) {
        questions.add(
                new ImportQuestion(tree.row(), mapping.sizeColumn(), doubt.value(), doubt.perhaps(), doubt.message()));
    }
}
