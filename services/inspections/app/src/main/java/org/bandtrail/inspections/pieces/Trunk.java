package org.bandtrail.inspections.pieces;

import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/** The trunk a band hangs on: the tree and the site that bears the cost. */
public record Trunk(TreeId tree, SiteId site) {}
