package org.bandtrail.siteinstalls.exports;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.jspecify.annotations.Nullable;

/** The columns of an exported register, named as open tree registers name them where they have a name for it. */
public enum TreeColumn {
    /** What is on the tag. */
    REF("ref", TreeView::tag),
    /** Identity of the site. */
    SITE("site", TreeView::siteId),
    /** Latitude in degrees, WGS 84, seven decimals. */
    LAT("lat", TreeView::lat),
    /** Longitude in degrees, WGS 84, seven decimals. */
    LON("lon", TreeView::lon),
    /** The genus, where the species is written as a scientific name. */
    GENUS("genus", TreeColumn::genus),
    /** The species as people wrote it. */
    SPECIES("species", TreeView::species),
    /** The EPPO code. */
    CODE("eppo_code", TreeView::speciesCode),
    /** Girth in millimetres. */
    GIRTH("girth_mm", TreeView::girthMm),
    /** Diameter in centimetres, girth / pi, one decimal. */
    DBH("dbh_cm", TreeColumn::diameter),
    /** Height of measuring above ground in millimetres. */
    HEIGHT("girth_height_mm", TreeView::girthHeightMm),
    /** The day of measuring (UTC), year first. */
    UPDATED("updated", TreeColumn::measuredOn),
    /** What else was said. */
    NOTE("location", TreeView::note);

    private static final Pattern SCIENTIFIC = Pattern.compile("([A-Z][a-z]+) [a-z].*");
    private final String field;
    private final Function<TreeView, @Nullable Object> value;

    TreeColumn(String field, Function<TreeView, @Nullable Object> value) {
        this.field = field;
        this.value = value;
    }

    /** Its name in the file. */
    public String field() {
        return field;
    }

    /** What a tree has there: a text, a whole or decimal number, or null. */
    @Nullable
    Object of(TreeView tree) {
        return value.apply(tree);
    }

    private static String genus(TreeView tree) {
        Matcher name = SCIENTIFIC.matcher(tree.species());
        return name.matches() ? name.group(1) : "";
    }

    private static @Nullable BigDecimal diameter(TreeView tree) {
        Long girth = tree.girthMm();
        return girth == null ? null : BigDecimal.valueOf(girth / Math.PI / 10).setScale(1, RoundingMode.HALF_UP);
    }

    private static @Nullable String measuredOn(TreeView tree) {
        return tree.girthMeasuredAt() == null
                ? null
                : tree.girthMeasuredAt().atOffset(ZoneOffset.UTC).toLocalDate().toString();
    }
}
