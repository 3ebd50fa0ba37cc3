package org.bandtrail.frontdesk.neighbours.money;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about money asked of supply-stock: months, grants, budgets, spend, journal. */
public final class Finance {
    private static final ParameterizedTypeReference<Rows<Funding.Grant>> GRANTS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Funding.SiteShares>> SHARES =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Funding.GrantSpend>> SPENT =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Spending.Line>> LINES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Spending.Work>> WORK = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Budgeting.Standing>> BUDGETS =
            new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Accounts.Version>> ACCOUNTS =
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
        return neighbour.everything(after -> neighbour.get("/grants", Rows.withAfter(Map.of(), after), GRANTS));
    }

    /** One grant and what was agreed about it. */
    public Funding.WholeGrant grant(String grantId) {
        return neighbour.get("/grants/" + grantId, Map.of(), Funding.WholeGrant.class);
    }

    /** Who pays for which site, all versions by site and month. */
    public List<Funding.SiteShares> shares() {
        return neighbour.everything(after -> neighbour.get("/site-shares", Rows.withAfter(Map.of(), after), SHARES));
    }

    /** What was spent of each grant so far. */
    public List<Funding.GrantSpend> spentByGrant() {
        return neighbour.get("/spend/grants", Map.of(), SPENT).rows();
    }

    /** One page of spend along one way of adding up, with {@code by}, {@code from}, {@code through}, {@code after}. */
    public Spending.Page spend(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/spend", asked, Spending.Page.class);
    }

    /** All rows of spend along one way of adding up. */
    public List<Spending.Row> allSpend(Map<String, String> asked) {
        return neighbour.everything(after -> {
            Spending.Page page = spend(Rows.withAfter(asked, after));
            return new Rows<>(page.rows(), page.next());
        });
    }

    /** One page of the charges behind a figure. */
    public Rows<Spending.Line> lines(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/spend/lines", asked, LINES);
    }

    /** All charges behind a figure. */
    public List<Spending.Line> allLines(Map<String, String> asked) {
        return neighbour.everything(after -> lines(Rows.withAfter(asked, after)));
    }

    /** What each site cost beside the work done there. */
    public List<Spending.Work> work(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/spend/work", asked, WORK).rows();
    }

    /** All budgets with actual and committed. */
    public List<Budgeting.Standing> budgets() {
        return neighbour.everything(after -> neighbour.get("/budgets", Rows.withAfter(Map.of(), after), BUDGETS));
    }

    /** One budget and what happened to it. */
    public Budgeting.Whole budget(String budgetId) {
        return neighbour.get("/budgets/" + budgetId, Map.of(), Budgeting.Whole.class);
    }

    /** The journal of a month. */
    public Accounts.Journal journal(YearMonth month) {
        return neighbour.get("/journal/" + month, Map.of(), Accounts.Journal.class);
    }

    /** The journal of a month as a file, {@code csv} or {@code xlsx}, byte for byte as supply-stock wrote it. */
    public byte[] journalFile(YearMonth month, String ending) {
        return neighbour.get("/journal/" + month + "." + ending, Map.of(), byte[].class);
    }

    /** The organisation's accounts, the newest mapping first. */
    public List<Accounts.Version> accounts() {
        return neighbour.get("/journal/accounts", Map.of(), ACCOUNTS).rows();
    }
}
