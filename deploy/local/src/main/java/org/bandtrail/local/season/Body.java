package org.bandtrail.local.season;

import java.time.Instant;
import org.bandtrail.local.doors.CommandIds;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Request bodies made from rows: a cell that is empty leaves its field out. */
final class Body {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Body() {}

    /** An empty object. */
    static ObjectNode empty() {
        return JSON.createObjectNode();
    }

    /** A body with the command identity of a row that says when it happened. */
    static ObjectNode of(Row row, String kind, String key) {
        Instant happened = Instant.parse(row.text("happenedAt"));
        return command(kind, key, happened).put("happenedAt", happened.toString());
    }

    /** A body with a command identity and nothing else yet. */
    static ObjectNode command(String kind, String key, Instant moment) {
        return JSON.createObjectNode()
                .put("commandId", CommandIds.of(kind, key, moment).toString());
    }

    /** Copies these cells under their own names, as text. */
    static void copy(Row row, ObjectNode body, String... columns) {
        for (String column : columns) {
            if (row.has(column)) {
                body.put(column, row.text(column));
            }
        }
    }

    /** Copies these cells under their own names, as whole numbers. */
    static void copyNumbers(Row row, ObjectNode body, String... columns) {
        for (String column : columns) {
            if (row.has(column)) {
                body.put(column, row.number(column));
            }
        }
    }

    /** An amount of money from the row's minor units and currency. */
    static void money(Row row, ObjectNode body, String field, String minorColumn) {
        body.putObject(field).put("minor", row.number(minorColumn)).put("currency", row.text("currency"));
    }

    /** An array of texts. */
    static void list(ObjectNode body, String field, Iterable<String> values) {
        var array = body.putArray(field);
        values.forEach(array::add);
    }
}
