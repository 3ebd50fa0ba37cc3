package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;
import org.bandtrail.kernel.LengthUnit;

/**
 * The three tree inventories of the place, each as a different office would keep it: other columns, another unit,
 * another way to say that a tree is dead. Some rows are wrong on purpose; the README of the demo data lists them.
 */
enum Inventory {
    DIAMETER_CM("dbh-cm.csv", "Site,Tag,Species,DBH_cm,Status", "LI", "DS", "S-06 S-07 S-08"),
    GIRTH_INCHES("girth-inches.csv", "plot,tree_no,girth_in,sp,condition", "living", "dead", "S-01 S-02 S-03 S-10"),
    GIRTH_FEET_INCHES("girth-feet-inches.csv", "Tree tag,Location,Round the trunk,Kind,Alive", "yes", "no", "");

    private final String file;
    private final String header;
    private final String alive;
    private final String dead;
    private final String sites;

    Inventory(String file, String header, String alive, String dead, String sites) {
        this.file = file;
        this.header = header;
        this.alive = alive;
        this.dead = dead;
        this.sites = sites;
    }

    /** The inventory a site's trees are listed in. */
    static Inventory of(String siteId) {
        return DIAMETER_CM.lists(siteId) ? DIAMETER_CM : GIRTH_INCHES.lists(siteId) ? GIRTH_INCHES : GIRTH_FEET_INCHES;
    }

    private boolean lists(String siteId) {
        return sites.contains(siteId);
    }

    /** Writes a girth as this inventory does: diameter in cm to 0.1, girth in inches to 0.1, or feet and inches. */
    String written(long girthMm) {
        return switch (this) {
            case DIAMETER_CM -> String.format(Locale.ROOT, "%.1f", girthMm / StrictMath.PI / 10);
            case GIRTH_INCHES -> String.format(Locale.ROOT, "%.1f", girthMm / 25.4);
            case GIRTH_FEET_INCHES -> LengthText.feetAndInches(Length.ofMm(girthMm));
        };
    }

    /** The girth in mm behind what is written; a diameter counts pi times, to the nearest mm. */
    long girthMm(String written) {
        return switch (this) {
            case DIAMETER_CM -> Math.round(StrictMath.PI * Double.parseDouble(written) * 10);
            case GIRTH_INCHES -> LengthText.parse(written, LengthUnit.INCH).mm();
            case GIRTH_FEET_INCHES -> LengthText.parse(written).mm();
        };
    }

    /** Writes this inventory with its deliberate mistakes, and the later corrections of those it measures again. */
    void write(List<Stand.Tree> trees, CsvTable corrections, Path folder) throws IOException {
        CsvTable table = new CsvTable(header);
        for (Stand.Tree tree : trees) {
            if (of(tree.siteId()) == this) {
                String wrong = Mistakes.wronglyWritten(tree);
                line(table, tree, wrong == null ? tree.written() : wrong);
                if (wrong != null) {
                    corrections.add(
                            tree.siteId(),
                            tree.tag(),
                            tree.species(),
                            this == DIAMETER_CM ? "" : tree.girthMm() + " mm",
                            this == DIAMETER_CM ? tree.written() + " cm" : "",
                            Mistakes.isStoredNevertheless(tree) ? "yes" : "no",
                            "2026-04-16T14:00:00Z",
                            Mistakes.whyWrong(tree));
                }
            }
        }
        if (this == DIAMETER_CM) {
            table.add("S-99", "T001", Stand.HOST, "31.0", alive);
            table.add("S-07", "T005", Stand.HOST, "28.4", alive);
        }
        table.write(folder.resolve(file));
    }

    private void line(CsvTable table, Stand.Tree tree, String written) {
        String state = tree.alive() ? alive : dead;
        switch (this) {
            case DIAMETER_CM -> table.add(tree.siteId(), tree.tag(), tree.species(), written, state);
            case GIRTH_INCHES -> table.add(tree.siteId(), tree.tag(), written, tree.species(), state);
            case GIRTH_FEET_INCHES -> table.add(tree.tag(), tree.siteId(), written, tree.species(), state);
        }
    }
}
