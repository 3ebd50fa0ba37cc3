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
 * @param progress of storing, null before it was begun
 * @param leftOut trees somebody else registered while it was stored
 */
public record KeptPreview(
        String importId,
        int rowCount,
        int selected,
        int ready,
        @Nullable Integer stored,
        @Nullable Progress progress,
        List<String> leftOut) {

    /**
     * How far storing is.
     *
     * @param done trees stored so far
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
        requireNotRunning();
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

    /**
     * Makes sure that it is not being stored right now, for then it can neither be stored again nor looked at anew.
     *
     * @throws ImportRefused.StoredBefore with the trees stored so far
     */
    public void requireNotRunning() {
        if (stored == null && progress != null) {
            throw new ImportRefused.StoredBefore(importId, progress.done());
        }
    }
}
