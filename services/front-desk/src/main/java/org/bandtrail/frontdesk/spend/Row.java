package org.bandtrail.frontdesk.spend;

import java.time.YearMonth;
import java.util.LinkedHashMap;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.money.Spending;
import org.bandtrail.frontdesk.pages.Desk;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriComponentsBuilder;

/**
 * One row of spend with its name in words and the page of the charges behind it.
 *
 * @param link the reason of the figure, null where it is a sum of other rows
 */
public record Row(String name, @Nullable String link, Spending.Row row) {
    /** Ways of adding up and their words, in the order of the page. */
    public static final Map<String, String> WAYS = ways();

    private static Map<String, String> ways() {
        Map<String, String> ways = new LinkedHashMap<>();
        ways.put("site", "site");
        ways.put("tree", "tree");
        ways.put("item", "item");
        ways.put("crew", "crew");
        ways.put("person", "person");
        ways.put("grant", "grant");
        ways.put("month", "month");
        return ways;
    }

    static Row of(Spending.Row row, String by, Stretch stretch, Map<String, String> names, Desk desk) {
        return switch (by) {
            case "site" ->
                new Row(named(names, row.siteId(), "no site"), lines(stretch, "account", "site:" + row.siteId()), row);
            case "tree" ->
                new Row(
                        row.treeId() == null
                                ? named(names, row.siteId(), "no site") + ", no tree named"
                                : "tree " + row.treeId(),
                        row.treeId() == null ? null : lines(stretch, "tree", row.treeId()),
                        row);
            case "item" ->
                new Row(
                        named(names, row.materialCode(), "no item"),
                        lines(stretch, "material", row.materialCode()),
                        row);
            case "crew" -> new Row(named(names, row.crewId(), "people of no crew"), null, row);
            case "person" -> new Row(desk.person(row.personId()), lines(stretch, "person", row.personId()), row);
            case "grant" ->
                new Row(named(names, row.grantId(), "no grant"), row.grantId() == null ? null : "/grants", row);
            default -> {
                String month = String.valueOf(row.month());
                yield new Row(desk.days().month(YearMonth.parse(month)), monthLines(month), row);
            }
        };
    }

    private static String named(Map<String, String> names, @Nullable String id, String nobody) {
        return id == null ? nobody : names.getOrDefault(id, id);
    }

    private static String monthLines(String month) {
        return "/spend/lines?from=" + month + "&through=" + month;
    }

    private static String lines(Stretch stretch, String what, @Nullable String value) {
        return UriComponentsBuilder.fromPath("/spend/lines")
                .query(stretch.query())
                .queryParam(what, "{value}")
                .buildAndExpand(Map.of("value", value == null ? "" : value))
                .encode()
                .toUriString();
    }
}
