package org.bandtrail.siteinstalls.imports;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.jspecify.annotations.Nullable;

/**
 * A mapping as people send it.
 *
 * @param siteId one site for all rows, or
 * @param siteColumn the column that names it
 * @param tagColumn column of the tag
 * @param speciesColumn column of the species
 * @param girthColumn column of the girth, or
 * @param dbhColumn column of the diameter
 * @param unit of bare numbers: mm, cm, m, in, ft, yd; {@code ft-in} if every value carries its units
 * @param dateColumn column of the date of measuring
 * @param aliveColumn only rows with aliveValue in this column
 * @param aliveValue see aliveColumn
 * @param genusColumn column of the genus, put before the species
 * @param codeColumn column of the EPPO code
 * @param latColumn column of the latitude in degrees
 * @param lonColumn column of the longitude in degrees
 * @param heightColumn column of the height of measuring
 * @param noteColumn column of a note
 * @param where further conditions, {@code column=value} joined by {@code &}
 */
record MappingRequest(
        @Nullable SiteId siteId,
        @Nullable String siteColumn,
        @Nullable String tagColumn,
        @Nullable String speciesColumn,
        @Nullable String girthColumn,
        @Nullable String dbhColumn,
        @Nullable String unit,
        @Nullable String dateColumn,
        @Nullable String aliveColumn,
        @Nullable String aliveValue,
        @Nullable String genusColumn,
        @Nullable String codeColumn,
        @Nullable String latColumn,
        @Nullable String lonColumn,
        @Nullable String heightColumn,
        @Nullable String noteColumn,
        @Nullable String where) {
    private static final String WITH_THE_VALUE = "ft-in";

    /**
     * The mapping.
     *
     * @throws IllegalArgumentException naming what is missing or cannot be
     */
    Mapping mapping() {
        String girth = given(girthColumn);
        String diameter = given(dbhColumn);
        if ((girth == null) == (diameter == null)) {
            throw new IllegalArgumentException("Give either the column of the girth or that of the diameter.");
        }
        return new Mapping(
                siteId,
                given(siteColumn),
                required("tagColumn", tagColumn),
                given(speciesColumn),
                girth == null ? required("dbhColumn", diameter) : girth,
                girth == null ? GirthBasis.DIAMETER : GirthBasis.GIRTH,
                unitOf(required("unit", unit)),
                given(dateColumn),
                conditions(),
                new Mapping.More(
                        given(genusColumn),
                        given(codeColumn),
                        given(latColumn),
                        given(lonColumn),
                        given(heightColumn),
                        given(noteColumn)));
    }

    private List<Mapping.Condition> conditions() {
        List<Mapping.Condition> conditions = new ArrayList<>();
        String column = given(aliveColumn);
        if (column != null) {
            conditions.add(new Mapping.Condition(column, required("aliveValue", aliveValue)));
        }
        String more = given(where);
        if (more != null) {
            conditions.addAll(Mapping.Condition.parse(more));
        }
        return conditions;
    }

    private static @Nullable LengthUnit unitOf(String word) {
        if (word.equals(WITH_THE_VALUE)) {
            return null;
        }
        LengthUnit unit = LengthUnit.spelt(word);
        if (unit == null) {
            throw new IllegalArgumentException(
                    "Unit [%s] is not known. Use mm, cm, m, in, ft or yd, or %s if every value carries its units."
                            .formatted(word, WITH_THE_VALUE));
        }
        return unit;
    }

    private static @Nullable String given(@Nullable String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }

    private static String required(String name, @Nullable String text) {
        String given = given(text);
        if (given == null) {
            throw new IllegalArgumentException("The mapping says no %s.".formatted(name));
        }
        return given;
    }
}
