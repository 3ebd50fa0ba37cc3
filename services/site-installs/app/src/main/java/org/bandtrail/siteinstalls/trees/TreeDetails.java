package org.bandtrail.siteinstalls.trees;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of a tree beside its girths: what can turn out to be wrong and is then corrected.
 *
 * @param siteId where it stands
 * @param tag what is written on its tag
 * @param species as people use it, empty if not known
 * @param speciesCode of the EPPO list, null if not known
 * @param position where it stands, null if nobody took it
 * @param note what else was said, empty if nothing
 */
public record TreeDetails(
        SiteId siteId,
        String tag,
        String species,
        @Nullable EppoCode speciesCode,
        @Nullable Point position,
        String note) {
    /** Keeps texts without surrounding blanks. */
    public TreeDetails {
        tag = tag.strip();
        species = species.strip();
        note = note.strip();
    }

    /** What is different from before, one item for each value, old value first, such as {@code tag 17, now 18}. */
    public List<String> changesFrom(TreeDetails before) {
        List<String> changes = new ArrayList<>();
        addChange(changes, "site", before.siteId, siteId);
        addChange(changes, "tag", before.tag, tag);
        addChange(changes, "species", before.species, species);
        addChange(changes, "species code", before.speciesCode, speciesCode);
        addChange(changes, "position", before.position, position);
        addChange(changes, "note", before.note, note);
        return List.copyOf(changes);
    }

    private static void addChange(List<String> changes, String name, @Nullable Object before, @Nullable Object after) {
        if (!Objects.equals(before, after)) {
            changes.add("%s %s, now %s".formatted(name, words(before), words(after)));
        }
    }

    private static String words(@Nullable Object value) {
        if (value instanceof Point point) {
            return "%s %s".formatted(Point.degrees(point.latitudeE7()), Point.degrees(point.longitudeE7()));
        }
        return value == null || value.toString().isEmpty() ? "none" : value.toString();
    }
}
