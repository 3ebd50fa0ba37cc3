package org.bandtrail.frontdesk.neighbours.field;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of site-installs: sites, trees, bands. */
public final class SiteInstalls {
    private static final ParameterizedTypeReference<Rows<Installs.Site>> SITES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Installs.Tree>> TREES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Installs.Band>> BANDS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public SiteInstalls(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** All sites. */
    public List<Installs.Site> sites() {
        return neighbour.everything(after -> neighbour.get("/sites", Rows.withAfter(Map.of(), after), SITES));
    }

    /** Trees by site or text. */
    public Rows<Installs.Tree> trees(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/trees", asked, TREES);
    }

    /** All trees that answer to this, page after page. */
    public List<Installs.Tree> allTrees(Map<String, String> asked) {
        return neighbour.everything(after -> trees(Rows.withAfter(asked, after)));
    }

    /** One tree with its history and bands. */
    public Installs.Tree tree(String treeId) {
        return neighbour.get("/trees/" + treeId, Map.of(), Installs.Tree.class);
    }

    /** Bands by site, state or text. */
    public Rows<Installs.Band> bands(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/bands", asked, BANDS);
    }

    /** All bands that answer to this, page after page. */
    public List<Installs.Band> allBands(Map<String, String> asked) {
        return neighbour.everything(after -> bands(Rows.withAfter(asked, after)));
    }

    /** One band with its history. */
    public Installs.Band band(String bandId) {
        return neighbour.get("/bands/" + bandId, Map.of(), Installs.Band.class);
    }

    /** Proposed lengths for a tree, or for a girth written with its unit. */
    public Installs.Proposal proposal(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/proposals", asked, Installs.Proposal.class);
    }
}
