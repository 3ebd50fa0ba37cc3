package org.bandtrail.frontdesk.neighbours;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about money asked of supply-stock: months, grants, budgets, spend, journal. */
public final class Finance {
    private static final ParameterizedTypeReference<Rows<Funding.Grant>> GRANTS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Funding.SiteShares>> SHARES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Funding.GrantSpend>> SPENT =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public Finance(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Months, the newest first; those before this one if it is given. */
    public Months.Page months(@Nullable YearMonth before) {
        return neighbour.get("/periods", before == null ? Map.of() : Map.of("after", before), Months.Page.class);
    }

    /** One month with its checks. */
    public Months.Whole month(YearMonth month) {
        return neighbour.get("/periods/" + month, Map.of(), Months.Whole.class);
    }

    /** All grants. */
    public List<Funding.Grant> grants() {
        return neighbour.everything(
                after -> neighbour.get("/grants", SupplyStock.withAfter(Map.of(), after), GRANTS));
    }

    /** One grant and what was agreed about it. */
    public Funding.WholeGrant grant(String grantId) {
        return neighbour.get("/grants/" + grantId, Map.of(), Funding.WholeGrant.class);
    }

    /** Who pays for which site, all versions by site and month. */
    public List<Funding.SiteShares> shares() {
        return neighbour.everything(
                after -> neighbour.get("/site-shares", SupplyStock.withAfter(Map.of(), after), SHARES));
    }

    /** What was spent of each grant so far. */
    public List<Funding.GrantSpend> spentByGrant() {
        return neighbour.get("/spend/grants", Map.of(), SPENT).rows();
    }
}
