package org.bandtrail.siteinstalls.imports;

import java.util.Collection;
import java.util.Set;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/** What a file is compared with: the registers of sites and trees as they stand. */
public interface Register {
    /** Whether the site is registered. */
    boolean hasSite(SiteId siteId);

    /** Those of the trees that are registered already. */
    Set<TreeId> taken(Collection<TreeId> trees);
}
