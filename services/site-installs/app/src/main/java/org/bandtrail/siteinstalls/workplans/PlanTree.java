package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;

/**
 * One tree of a plan with what was reckoned for it.
 *
 * @param treeId the tree
 * @param siteId where it stands
 * @param girth it was reckoned with
 * @param bands how many go on it, 1 to 9
 * @param tape length of each piece, zero if nothing is cut from tape
 * @param mesh length of each piece, zero if nothing is cut from mesh
 * @param fasteners for the whole tree, none if none are planned
 * @param others what else is counted for the whole tree, none if nothing is planned
 */
public record PlanTree(
        TreeId treeId,
        SiteId siteId,
        Length girth,
        int bands,
        Length tape,
        Length mesh,
        Pieces fasteners,
        Pieces others) {}
