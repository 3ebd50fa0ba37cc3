package org.bandtrail.siteinstalls.hostchecks;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One host check as people see it.
 *
 * @param treeId the tree
 * @param pest EPPO code
 * @param keyVersion the edition of the key
 * @param outcome HOST, NOT_HOST or UNSURE
 * @param speciesCode the kind that fits best, null if none does
 * @param confidencePercent how well the answers fit it
 * @param answers what was answered
 * @param by who looked
 * @param happenedAt when
 */
public record HostCheckView(
        String treeId,
        String pest,
        int keyVersion,
        String outcome,
        @Nullable String speciesCode,
        int confidencePercent,
        List<HostAnswer> answers,
        String by,
        Instant happenedAt) {

    /**
     * A band that hangs on a tree which is no host, or of which nobody knows.
     *
     * @param bandId the band
     * @param treeId its tree
     * @param siteId its site, null if not known
     * @param finding not-checked, no-host, unsure or gone
     * @param message one sentence with what to do
     */
    public record Finding(
            String bandId, String treeId, @Nullable String siteId, String finding, String message) {}
}
