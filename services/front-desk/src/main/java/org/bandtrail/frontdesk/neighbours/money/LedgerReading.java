package org.bandtrail.frontdesk.neighbours.money;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions about the ledger asked of supply-stock: trial, the past, lines, cost policy. */
public final class LedgerReading {
    private static final ParameterizedTypeReference<Rows<Ledger.Entry>> ENTRIES = new ParameterizedTypeReference<>() {};
    private static final int PAGE = 200;
    private static final int FILE_PAGE = 1_000;
    private final Neighbour neighbour;

    /** Supply-stock behind this neighbour. */
    public LedgerReading(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** One page of the trial of a month. */
    public Ledger.Trial trial(YearMonth month, @Nullable String after) {
        return trial(month, after, PAGE);
    }

    private Ledger.Trial trial(YearMonth month, @Nullable String after, int limit) {
        Map<String, Object> asked = Map.of("period", month, "limit", limit);
        return neighbour.get("/trial", after(asked, after), Ledger.Trial.class);
    }

    /** The whole trial of a month. */
    public List<Ledger.TrialLine> wholeTrial(YearMonth month) {
        List<Ledger.TrialLine> all = new ArrayList<>();
        String after = null;
        do {
            Ledger.Trial page = trial(month, after, FILE_PAGE);
            all.addAll(page.rows());
            after = page.next();
        } while (after != null);
        return all;
    }

    /** One page of the books at a past moment. */
    public Ledger.Past past(Map<String, Object> asked, @Nullable String after) {
        return neighbour.get("/as-of", after(asked, after), Ledger.Past.class);
    }

    /** The whole books at a past moment. */
    public List<Ledger.PastLine> wholePast(Map<String, Object> asked) {
        Map<String, Object> larger = new HashMap<>(asked);
        larger.put("limit", FILE_PAGE);
        List<Ledger.PastLine> all = new ArrayList<>();
        String after = null;
        do {
            Ledger.Past page = past(larger, after);
            all.addAll(page.rows());
            after = page.next();
        } while (after != null);
        return all;
    }

    /** One page of lines; which, by month, item, place, account, reel or batch. */
    public Rows<Ledger.Entry> lines(Map<String, String> asked, @Nullable String after) {
        return neighbour.get("/ledger", after(asked, after), ENTRIES);
    }

    /** All lines that answer to this. */
    public List<Ledger.Entry> allLines(Map<String, String> asked) {
        Map<String, String> larger = new HashMap<>(asked);
        larger.put("limit", Integer.toString(FILE_PAGE));
        return neighbour.everything(after -> lines(larger, after));
    }

    /** How fasteners are valued. */
    public Ledger.Policies policies() {
        return neighbour.get("/cost-policies", Map.of(), Ledger.Policies.class);
    }

    private static Map<String, Object> after(Map<String, ?> asked, @Nullable String after) {
        Map<String, Object> whole = new HashMap<>(asked);
        if (after != null && !after.isEmpty()) {
            whole.put("after", after);
        }
        return whole;
    }
}
