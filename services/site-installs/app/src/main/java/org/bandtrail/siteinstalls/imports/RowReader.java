package org.bandtrail.siteinstalls.imports;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.function.Consumer;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.trees.Tree;
import org.jspecify.annotations.Nullable;

/** Reads the mapped values of one row after another and tells every problem of the row, not only the first. */
final class RowReader {
    private static final String BARE_NUMBER = "\\d{1,7}([.,]\\d{1,4})?";

    private final Mapping mapping;
    private final List<String> columns;
    private final Consumer<ImportProblem> problems;

    /**
     * A reader for a file with these columns.
     *
     * @throws ImportRefused.ColumnMissing if the mapping names another column
     */
    RowReader(Mapping mapping, List<String> columns, Consumer<ImportProblem> problems) {
        this.mapping = mapping;
        this.columns = columns;
        this.problems = problems;
        require(mapping.siteColumn());
        require(mapping.tagColumn());
        require(mapping.speciesColumn());
        require(mapping.sizeColumn());
        require(mapping.dateColumn());
        require(mapping.more().genusColumn());
        require(mapping.more().codeColumn());
        require(mapping.more().latColumn());
        require(mapping.more().lonColumn());
        require(mapping.more().heightColumn());
        require(mapping.more().noteColumn());
        mapping.conditions().forEach(condition -> require(condition.column()));
    }

    private void require(@Nullable String column) {
        if (column != null && !columns.contains(column)) {
            throw new ImportRefused.ColumnMissing(column, columns);
        }
    }

    /** Whether the row meets the conditions of the mapping. */
    boolean selects(InventoryFile.Row row) {
        return mapping.conditions().stream()
                .allMatch(condition -> value(row, condition.column()).equals(condition.value()));
    }

    /** The tree of the row, null if it has a problem, which is then told. */
    @Nullable
    ReadyTree read(InventoryFile.Row row) {
        if (row.fields().size() != columns.size()) {
            tell(
                    row,
                    "",
                    "",
                    "The row has %d fields, the header %d."
                            .formatted(row.fields().size(), columns.size()),
                    "Look for a separator or a line end inside a value and put the value in quotes.");
            return null;
        }
        SiteId site = site(row);
        TreeId tree = tree(row, site);
        WrittenGirth girth = girth(row);
        Measured measured = measured(row);
        ReadyTree.More more = new MoreReader(
                        mapping.more(),
                        column -> value(row, column),
                        (column, value, problem, advice) -> tell(row, column, value, problem, advice))
                .read();
        if (site == null || tree == null || girth == null || !measured.readable() || more == null) {
            return null;
        }
        String tag = value(row, mapping.tagColumn());
        return new ReadyTree(row.number(), tree, site, tag, species(row), girth, measured.date(), more);
    }

    private String species(InventoryFile.Row row) {
        String genus = mapping.more().genusColumn() == null
                ? ""
                : value(row, mapping.more().genusColumn());
        String species = mapping.speciesColumn() == null ? "" : value(row, mapping.speciesColumn());
        return species.startsWith(genus) ? species : (genus + " " + species).strip();
    }

    private @Nullable SiteId site(InventoryFile.Row row) {
        String column = mapping.siteColumn();
        if (column == null) {
            return mapping.siteId();
        }
        String written = value(row, column);
        try {
            return new SiteId(written.replaceAll("[^A-Za-z0-9]+", "-"));
        } catch (IllegalArgumentException noIdentity) {
            tell(row, column, written, "This names no site.", "Write the site's identity: letters, digits, dashes.");
            return null;
        }
    }

    private @Nullable TreeId tree(InventoryFile.Row row, @Nullable SiteId site) {
        String tag = value(row, mapping.tagColumn());
        if (tag.isEmpty()) {
            tell(row, mapping.tagColumn(), tag, "The tag is missing.", "Write what is on the tag.");
            return null;
        }
        if (tag.length() > 40 || tag.indexOf('\uFFFD') >= 0 || tag.chars().anyMatch(Character::isISOControl)) {
            tell(row, mapping.tagColumn(), tag, "This cannot be a tag.", "Write 1 to 40 readable characters.");
            return null;
        }
        if (site == null) {
            return null;
        }
        try {
            return Tree.named(site, tag);
        } catch (IllegalArgumentException noIdentity) {
            tell(
                    row,
                    mapping.tagColumn(),
                    tag,
                    "Site and tag make no identity of at most 40 letters, digits and dashes.",
                    "Shorten the tag.");
            return null;
        }
    }

    private @Nullable WrittenGirth girth(InventoryFile.Row row) {
        String written = value(row, mapping.sizeColumn());
        String word = mapping.basis().word();
        if (written.isEmpty()) {
            tell(
                    row,
                    mapping.sizeColumn(),
                    written,
                    "The %s is missing.".formatted(word),
                    "Measure the tree, or leave the row out.");
            return null;
        }
        LengthUnit unit = mapping.unit();
        String text = unit != null && written.matches(BARE_NUMBER) ? written + " " + unit.symbol() : written;
        try {
            return new WrittenGirth(text, mapping.basis());
        } catch (IllegalArgumentException unreadable) {
            tell(
                    row,
                    mapping.sizeColumn(),
                    written,
                    "This is no %s.".formatted(word),
                    String.valueOf(unreadable.getMessage()));
            return null;
        }
    }

    /** A date that may be missing but must not be wrong. */
    private record Measured(boolean readable, @Nullable LocalDate date) {}

    private Measured measured(InventoryFile.Row row) {
        String column = mapping.dateColumn();
        String written = column == null ? "" : value(row, column);
        if (column == null || written.isEmpty()) {
            return new Measured(true, null);
        }
        try {
            return new Measured(true, LocalDate.parse(written));
        } catch (DateTimeParseException noDate) {
            tell(row, column, written, "This is no date.", "Write year, month and day, such as 2026-03-10.");
            return new Measured(false, null);
        }
    }

    private String value(InventoryFile.Row row, String column) {
        int index = columns.indexOf(column);
        return index < row.fields().size() ? row.fields().get(index).strip() : "";
    }

    private void tell(InventoryFile.Row row, String column, String value, String problem, String advice) {
        problems.accept(new ImportProblem(row.number(), column, value, problem, advice));
    }
}
