package org.bandtrail.benchmark;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** How long a page of each list takes over HTTP in a full depot: database, JSON and all. */
final class PageSpeed {
    private static final int TIMES = 21;
    private final Browser browser;

    PageSpeed(Browser browser) {
        this.browser = browser;
    }

    /** The pages of a depot with so many reels. */
    static Map<String, String> pages(int reels) {
        String middle = "BIG-R%06d".formatted(reels / 2);
        String lot = "LOT%20" + reels / 2 / FullDepot.REELS_A_LOT;
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("home: the trail", "/trail");
        pages.put("audit", "/audit");
        pages.put("what does not add up", "/discrepancies");
        pages.put("reels, first page", "/reels?limit=100");
        pages.put("reels, from the middle", "/reels?limit=100&after=" + middle);
        pages.put("reels with 1234 in the label", "/reels?limit=100&q=1234");
        pages.put("reels, a word nobody wrote", "/reels?limit=100&q=NOWHERE");
        pages.put("reels of one material", "/reels?limit=100&material=TAPE-1");
        pages.put("reels in the depot", "/reels?limit=100&place=depot:BIG");
        pages.put("reels in the depot, from the middle", "/reels?limit=100&place=depot:BIG&after=" + middle);
        pages.put("reels on one tree", "/reels?limit=100&place=tree:T-77");
        pages.put("reels of one material on one tree", "/reels?limit=100&material=TAPE-1&place=tree:T-77");
        pages.put("one reel with its history", "/reels/" + middle);
        pages.put("by place, first page", "/whereabouts?by=place&limit=200");
        pages.put("by place, trees", "/whereabouts?by=place&limit=200&after=tree:");
        pages.put("by site", "/whereabouts?by=site");
        pages.put("trace of a lot of 200 reels", "/traces?what=lot&id=" + lot);
        pages.put("trace of a lot, its trees", "/traces/places?what=lot&id=" + lot + "&kind=tree&limit=100");
        pages.put("trace of a lot, its reels", "/traces/holdings?what=lot&id=" + lot + "&limit=100");
        pages.put("trace of a tree", "/traces?what=tree&id=T-77");
        pages.put("a scanned label", "/traces/found?find=" + middle);
        pages.put("spend per site", "/spend?by=site&limit=200");
        pages.put("spend per crew", "/spend?by=crew&limit=200");
        pages.put("as of a past moment, by place", "/as-of?at=2026-01-20T12:00:00Z&limit=200");
        pages.put("ledger, first page", "/ledger?limit=200");
        pages.put("ledger of one site, first page", "/ledger?account=site:S-7&limit=200");
        pages.put("trial of a month", "/trial?period=2026-01&limit=200");
        pages.put("checks of a month's close", "/periods/2026-01");
        return pages;
    }

    /** One line of the table: median and slowest of some calls, after some to warm up. */
    String row(String what, String path) throws Exception {
        double[] millis = new double[TIMES];
        for (int warm = 0; warm < 5; warm++) {
            browser.get(path);
        }
        for (int time = 0; time < TIMES; time++) {
            long begin = System.nanoTime();
            browser.get(path);
            millis[time] = (System.nanoTime() - begin) / 1e6;
        }
        Arrays.sort(millis);
        return String.format(Locale.ROOT, "| %s | %.1f | %.1f |", what, millis[TIMES / 2], millis[TIMES - 1]);
    }
}
