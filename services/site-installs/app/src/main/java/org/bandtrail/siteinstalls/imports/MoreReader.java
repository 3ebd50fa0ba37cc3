package org.bandtrail.siteinstalls.imports;

import java.math.BigDecimal;
import java.util.function.Function;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/** Reads the columns a list may have or not; an empty value is not told, a wrong one is a problem. */
final class MoreReader {
    private static final String DEGREES = "[-+]?\\d{1,3}([.,]\\d{1,15})?";
    private final Mapping.More mapping;
    private final Function<String, String> values;
    private final Telling problems;

    /** Where problems go. */
    interface Telling {
        void tell(String column, String value, String problem, String advice);
    }

    /**
     * A reader of one row.
     *
     * @param values from name of column to what is written there, stripped
     */
    MoreReader(Mapping.More mapping, Function<String, String> values, Telling problems) {
        this.mapping = mapping;
        this.values = values;
        this.problems = problems;
    }

    /** What the row tells, null if some of it is wrong, which is then told. */
    ReadyTree.@Nullable More read() {
        EppoCode code = null;
        Point position = null;
        Length height = null;
        boolean good = true;
        try {
            code = code();
        } catch (IllegalArgumentException wrong) {
            good = wrong(mapping.codeColumn(), wrong, "Write its EPPO code, or leave it empty.");
        }
        try {
            position = position();
        } catch (IllegalArgumentException wrong) {
            good = wrong(
                    mapping.latColumn(), wrong, "Write degrees in WGS 84, such as 40.4417301; minus is south or west.");
        }
        try {
            height = height();
        } catch (IllegalArgumentException wrong) {
            good = wrong(
                    mapping.heightColumn(), wrong, "Write the height above ground with its unit, such as 1300 mm.");
        }
        return good ? new ReadyTree.More(code, position, height, value(mapping.noteColumn())) : null;
    }

    private boolean wrong(@Nullable String column, IllegalArgumentException why, String advice) {
        problems.tell(column == null ? "" : column, value(column), String.valueOf(why.getMessage()), advice);
        return false;
    }

    private @Nullable EppoCode code() {
        String written = value(mapping.codeColumn());
        return written.isEmpty() ? null : new EppoCode(written);
    }

    private @Nullable Point position() {
        String lat = value(mapping.latColumn());
        String lon = value(mapping.lonColumn());
        if (lat.isEmpty() && lon.isEmpty()) {
            return null;
        }
        return Point.ofDegrees(degrees("Latitude", lat), degrees("Longitude", lon));
    }

    private static BigDecimal degrees(String name, String written) {
        if (!written.matches(DEGREES)) {
            throw new IllegalArgumentException("%s [%s] is no number of degrees.".formatted(name, written));
        }
        return new BigDecimal(written.replace(',', '.'));
    }

    private @Nullable Length height() {
        String written = value(mapping.heightColumn());
        if (written.isEmpty()) {
            return null;
        }
        String text = written.matches("\\d{1,5}") ? written + " mm" : written;
        return Length.ofMm((LengthText.micrometres(text, null) + 500) / 1_000);
    }

    private String value(@Nullable String column) {
        return column == null ? "" : values.apply(column);
    }
}
