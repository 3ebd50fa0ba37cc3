package org.bandtrail.siteinstalls.imports;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.girths.GirthBasis;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a file means what.
 *
 * @param siteId the site of all rows, null if a column tells it
 * @param siteColumn column of the site, null if one site is given
 * @param tagColumn column of the tag
 * @param speciesColumn column of the species, null if there is none
 * @param sizeColumn column of the girth or the diameter
 * @param basis which of the two
 * @param unit of numbers that are written without one, null if every value carries its units
 * @param dateColumn column of the date of measuring (2026-03-10), null if there is none
 * @param conditions rows that do not meet all of them are not looked at
 * @param more columns a list may have or not
 */
public record Mapping(
        @Nullable SiteId siteId,
        @Nullable String siteColumn,
        String tagColumn,
        @Nullable String speciesColumn,
        String sizeColumn,
        GirthBasis basis,
        @Nullable LengthUnit unit,
        @Nullable String dateColumn,
        List<Condition> conditions,
        More more) {
    /** A mapping without further columns. */
    public Mapping(
            @Nullable SiteId siteId,
            @Nullable String siteColumn,
            String tagColumn,
            @Nullable String speciesColumn,
            String sizeColumn,
            GirthBasis basis,
            @Nullable LengthUnit unit,
            @Nullable String dateColumn,
            List<Condition> conditions) {
        this(siteId, siteColumn, tagColumn, speciesColumn, sizeColumn, basis, unit, dateColumn, conditions, More.NONE);
    }

    /**
     * Columns a list may have or not, null where it has none.
     *
     * @param genusColumn the genus, put before the species
     * @param codeColumn the EPPO code of the species
     * @param latColumn latitude in degrees, WGS 84
     * @param lonColumn longitude in degrees, WGS 84
     * @param heightColumn height of measuring above ground, numbers without unit in millimetres
     * @param noteColumn what else is to be said
     */
    public record More(
            @Nullable String genusColumn,
            @Nullable String codeColumn,
            @Nullable String latColumn,
            @Nullable String lonColumn,
            @Nullable String heightColumn,
            @Nullable String noteColumn) {
        /** No further column. */
        public static final More NONE = new More(null, null, null, null, null, null);

        /**
         * Refuses half a position.
         *
         * @throws IllegalArgumentException if only one of latitude and longitude has a column
         */
        public More {
            if ((latColumn == null) != (lonColumn == null)) {
                throw new IllegalArgumentException("Give the columns of both latitude and longitude, or of none.");
            }
        }
    }

    /**
     * Refuses mappings that do not say where the site is.
     *
     * @throws IllegalArgumentException naming what is missing
     */
    public Mapping {
        conditions = List.copyOf(conditions);
        if ((siteId == null) == (siteColumn == null)) {
            throw new IllegalArgumentException("Give either one site for all rows or the column that names it.");
        }
    }

    /**
     * Only rows with this value in this column are looked at, for example {@code Status_2026} = {@code LI}.
     *
     * @param column name of the column
     * @param value compared without surrounding blanks
     */
    public record Condition(String column, String value) {

        /**
         * Reads {@code column=value}, several joined by {@code &}.
         *
         * @throws IllegalArgumentException naming the part without an equals sign
         */
        public static List<Condition> parse(String text) {
            List<Condition> conditions = new ArrayList<>();
            for (String part : text.split("&", -1)) {
                int equals = part.indexOf('=');
                if (equals < 1) {
                    throw new IllegalArgumentException(
                            "Condition [%s] is not column=value, such as Status=LI.".formatted(part.strip()));
                }
                conditions.add(new Condition(
                        part.substring(0, equals).strip(),
                        part.substring(equals + 1).strip()));
            }
            return List.copyOf(conditions);
        }
    }
}
