package org.bandtrail.frontdesk.purchasing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Days;

/**
 * Reads the one page on which a delivery is received. A row counts if something was measured or counted in it; what is
 * the same for a whole line (lot, expiry, width) is written once and holds for every row that says nothing else.
 */
final class DeliveryBody {
    private final Form form;

    DeliveryBody(Form form) {
        this.form = form;
    }

    Map<String, Object> of(Days days) {
        return form.body()
                .text("deliveryId", "purchaseId", "supplierId", "depotId", "deliveryNote", "bin")
                .put("accept", form.has("accept"))
                .put("lines", lines())
                .happened(days)
                .done();
    }

    private List<Map<String, Object>> lines() {
        Map<String, Line> lines = new LinkedHashMap<>();
        Map<String, Map<String, String>> heads = new LinkedHashMap<>();
        form.lines(
                        "lineKey",
                        "lineOrder",
                        "lineMaterial",
                        "lineUnits",
                        "linePaper",
                        "lineCost",
                        "lineLot",
                        "lineExpires",
                        "lineWidth")
                .forEach((number, parts) -> heads.put(parts.getOrDefault("lineKey", ""), parts));
        form.lines("rowLine", "rowId", "rowQuantity", "rowLot", "rowExpires", "rowCondition")
                .forEach((number, row) -> {
                    Map<String, String> head = heads.getOrDefault(row.getOrDefault("rowLine", ""), Map.of());
                    if (filled(row, "rowQuantity")) {
                        Line line = lines.computeIfAbsent(row.getOrDefault("rowLine", ""), key -> head(head));
                        add(line, row, head);
                    }
                });
        return lines.values().stream().map(Line::fields).toList();
    }

    /** A line of the body with the lists it holds. */
    private record Line(
            Map<String, Object> fields, List<Map<String, Object>> reels, List<Map<String, Object>> batches) {
        Line(Map<String, Object> fields) {
            this(fields, new ArrayList<>(), new ArrayList<>());
            fields.put("reels", reels);
            fields.put("batches", batches);
        }
    }

    private Line head(Map<String, String> head) {
        Map<String, Object> line = new LinkedHashMap<>();
        whole(line, "purchaseLine", head, "lineOrder");
        whole(line, "units", head, "lineUnits");
        whole(line, "statedUnits", head, "linePaper");
        if (filled(head, "lineMaterial")) {
            line.put("materialCode", material(head));
        }
        if (filled(head, "lineCost")) {
            line.put("cost", Form.money("cost", head.getOrDefault("lineCost", ""), form.text("costCurrency")));
        }
        return new Line(line);
    }

    /** The chosen item; the page marks fasteners, because they are counted and not measured. */
    private static String material(Map<String, String> head) {
        return head.getOrDefault("lineMaterial", "").replaceFirst(" FASTENER$", "");
    }

    private void add(Line line, Map<String, String> row, Map<String, String> head) {
        boolean fasteners = head.getOrDefault("lineMaterial", "").endsWith(" FASTENER");
        Map<String, Object> piece = new LinkedHashMap<>();
        String quantity = row.getOrDefault("rowQuantity", "");
        if (filled(row, "rowId")) {
            piece.put(fasteners ? "batchId" : "reelId", row.getOrDefault("rowId", ""));
        }
        if (fasteners) {
            piece.put("pieces", Form.whole("pieces", quantity));
        } else {
            piece.put("length", Form.withUnit(quantity, form.text("lengthUnit")));
            if (filled(head, "lineWidth")) {
                piece.put("width", Form.withUnit(head.getOrDefault("lineWidth", ""), form.text("widthUnit")));
            }
        }
        either(piece, "lot", row, "rowLot", head, "lineLot");
        either(piece, "expiresOn", row, "rowExpires", head, "lineExpires");
        if (filled(row, "rowCondition")) {
            piece.put("condition", row.getOrDefault("rowCondition", ""));
        }
        (fasteners ? line.batches() : line.reels()).add(piece);
    }

    private static void either(
            Map<String, Object> piece,
            String name,
            Map<String, String> row,
            String rowField,
            Map<String, String> head,
            String headField) {
        String text = filled(row, rowField) ? row.getOrDefault(rowField, "") : head.getOrDefault(headField, "");
        if (!text.isEmpty()) {
            piece.put(name, text);
        }
    }

    private static void whole(Map<String, Object> line, String name, Map<String, String> head, String field) {
        if (filled(head, field)) {
            line.put(name, Form.whole(name, head.getOrDefault(field, "")));
        }
    }

    private static boolean filled(Map<String, String> parts, String field) {
        return !parts.getOrDefault(field, "").isEmpty();
    }
}
