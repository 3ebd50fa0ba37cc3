package org.bandtrail.siteinstalls.imports;

import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/**
 * A preview that is kept until somebody stores it.
 *
 * @param importId made of the content of file and mapping
 * @param rowCount rows below the header
 * @param selected rows that meet the conditions
 * @param ready rows that can be stored
 * @param stored trees stored, null before
 * @param progress of storing, null before
 */
public record KeptPreview(
        String importId,
        int rowCount,
        int selected,
        int ready,
        @Nullable Integer stored,
        @Nullable Progress progress) {

    /**
     * How far storing is.
     *
     * @param done trees written; they count only when all are
     * @param total trees to write
     */
    public record Progress(int done, int total) {}

    /**
     * Tells whether it may be stored.
     *
     * @param onlyReady whether somebody agreed to leave out rows with problems
     * @throws ImportRefused if it was stored before, or rows are not ready and nobody agreed
     */
    public void requireStorable(boolean onlyReady) {
        if (stored != null) {
            throw new ImportRefused.StoredBefore(importId, stored);
        }
        if (!onlyReady && ready < selected) {
            throw new ImportRefused.NotAllReady(importId, ready, selected);
        }
    }

    /**
     * Makes sure that what was shown as new still is.
     *
     * @throws ImportRefused.RegisterChanged naming up to five trees
     */
    public void requireNew(Set<TreeId> taken) {
        if (!taken.isEmpty()) {
            List<String> some =
                    taken.stream().map(TreeId::value).sorted().limit(5).toList();
            throw new ImportRefused.RegisterChanged(importId, some);
        }
    }
}
