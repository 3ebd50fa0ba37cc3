package org.bandtrail.siteinstalls.imports;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.sites.Sites;
import org.bandtrail.siteinstalls.trees.Trees;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** Looks at inventory files and stores what was shown. */
@Component
class TreeImports {
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private final Work work;
    private final Sites sites;
    private final Trees trees;
    private final ImportStoring storing;
    private final CutPolicies policies;
    private final KeptPreviews kept;
    private final ObjectProvider<Projectors> projectors;
    private final Clock clock;

    TreeImports(
            Work work,
            Sites sites,
            Trees trees,
            ImportStoring storing,
            CutPolicies policies,
            KeptPreviews kept,
            ObjectProvider<Projectors> projectors,
            Clock clock) {
        this.work = work;
        this.sites = sites;
        this.trees = trees;
        this.storing = storing;
        this.policies = policies;
        this.kept = kept;
        this.projectors = projectors;
        this.clock = clock;
    }

    /** Looks through a file and keeps what is ready under {@link #importId}. */
    Preview preview(byte[] file, Mapping mapping, PersonId by) {
        waitForRows();
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        Preview preview = Previewing.of(
                file, mapping, register(), policies.on(today).values().girth());
        return work.inOneTransaction(() -> {
            kept.locked(importId(file, mapping)).ifPresent(KeptPreview::requireNotRunning);
            kept.keep(importId(file, mapping), preview, by, clock.instant());
            return preview;
        });
    }

    /**
     * Begins to store the ready rows of a preview, inside a work, see {@link ImportStoring#begin}.
     *
     * @return how it stands
     */
    KeptPreview store(String importId, boolean onlyReady, PersonId by) {
        waitForRows();
        return storing.begin(importId, onlyReady, by);
    }

    /** The identity of a preview: the same file with the same mapping is the same import. */
    static String importId(byte[] file, Mapping mapping) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(mapping.toString().getBytes(StandardCharsets.UTF_8));
            String hex = HexFormat.of().formatHex(digest.digest(file), 0, 8);
            return "IMP-" + hex.toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    /** Sites and trees entered a moment ago must be seen, so the rows are given time to catch up. */
    private void waitForRows() {
        if (!projectors.getObject().caughtUp(PATIENCE)) {
            throw new ImportRefused.RegisterBusy();
        }
    }

    private Register register() {
        return new Register() {
            @Override
            public boolean hasSite(SiteId siteId) {
                return !sites.registered(List.of(siteId)).isEmpty();
            }

            @Override
            public Set<TreeId> taken(Collection<TreeId> asked) {
                return trees.registered(asked).keySet();
            }
        };
    }
}
