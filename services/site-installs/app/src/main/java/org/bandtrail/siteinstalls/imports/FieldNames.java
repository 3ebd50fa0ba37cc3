package org.bandtrail.siteinstalls.imports;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What columns probably mean, by the field names that open tree registers of councils share (lat, lon, genus, species,
 * dbh, ref, updated and their spellings; common practice, no source) and by those of our own exports. A proposal is
 * shown to be confirmed; a unit is proposed only where the name carries it, because it is never guessed.
 */
public final class FieldNames {
    /** Field of the mapping to the names it goes by, the likeliest first. */
    private static final Map<String, List<String>> SPELLINGS = new LinkedHashMap<>();

    static {
        SPELLINGS.put("siteColumn", List.of("site", "site_id", "plot"));
        SPELLINGS.put(
                "tagColumn", List.of("ref", "tag", "tree_id", "treeid", "tree_ref", "tree_number", "number", "id"));
        SPELLINGS.put("genusColumn", List.of("genus"));
        SPELLINGS.put(
                "speciesColumn",
                List.of("species", "scientific", "scientific_name", "botanical", "common", "common_name", "name"));
        SPELLINGS.put("codeColumn", List.of("eppo", "eppo_code", "code"));
        SPELLINGS.put("latColumn", List.of("lat", "latitude"));
        SPELLINGS.put("lonColumn", List.of("lon", "lng", "long", "longitude"));
        SPELLINGS.put("girthColumn", List.of("girth_mm", "girth_cm", "girth_in", "girth", "circumference"));
        SPELLINGS.put("dbhColumn", List.of("dbh", "dbh_mm", "dbh_cm", "dbh_in", "diameter"));
        SPELLINGS.put("heightColumn", List.of("girth_height_mm", "girth_height"));
        SPELLINGS.put("dateColumn", List.of("measured", "measured_on", "updated", "date"));
        SPELLINGS.put("noteColumn", List.of("location", "note", "notes", "address", "description"));
    }

    private FieldNames() {}

    /** Fields of a {@link MappingRequest} with the column proposed for each; fields without one are left out. */
    public static Map<String, String> propose(List<String> columns) {
        Map<String, String> proposal = new LinkedHashMap<>();
        SPELLINGS.forEach((field, names) -> {
            String column = first(columns, names);
            if (column != null) {
                proposal.put(field, column);
            }
        });
        if (proposal.containsKey("girthColumn")) {
            proposal.remove("dbhColumn");
        }
        if (proposal.containsKey("latColumn") != proposal.containsKey("lonColumn")) {
            proposal.remove("latColumn");
            proposal.remove("lonColumn");
        }
        String size = proposal.getOrDefault("girthColumn", proposal.getOrDefault("dbhColumn", ""));
        String spelt = spelt(size);
        int unit = spelt.lastIndexOf('_');
        if (unit > 0 && List.of("mm", "cm", "in").contains(spelt.substring(unit + 1))) {
            proposal.put("unit", spelt.substring(unit + 1));
        }
        return proposal;
    }

    private static @Nullable String first(List<String> columns, List<String> names) {
        for (String name : names) {
            for (String column : columns) {
                if (spelt(column).equals(name)) {
                    return column;
                }
            }
        }
        return null;
    }

    private static String spelt(String column) {
        return column.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "_")
                .replaceAll("^_|_$", "");
    }
}
