package org.bandtrail.siteinstalls.exports;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

/** The formats a register can be written in, each tree by tree. */
public enum TreeFormat {
    /** RFC 4180, UTF-8. */
    CSV("text/csv;charset=utf-8") {
        @Override
        public void write(Iterator<TreeView> trees, OutputStream out) throws IOException {
            CsvWriter csv = CsvWriter.builder().build(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            csv.writeRecord(COLUMNS.stream().map(TreeColumn::field).toList());
            while (trees.hasNext()) {
                TreeView tree = trees.next();
                csv.writeRecord(
                        COLUMNS.stream().map(column -> text(column.of(tree))).toList());
            }
            csv.flush();
        }
    },
    /** RFC 7946: WGS 84, longitude first, seven decimals; a tree without a position has no geometry. */
    GEOJSON("application/geo+json") {
        @Override
        public void write(Iterator<TreeView> trees, OutputStream out) {
            try (JsonGenerator json = JsonMapper.builder().build().createGenerator(out)) {
                json.writeStartObject();
                json.writeStringProperty("type", "FeatureCollection");
                json.writeArrayPropertyStart("features");
                while (trees.hasNext()) {
                    feature(json, trees.next());
                }
                json.writeEndArray();
                json.writeEndObject();
            }
        }
    },
    /** One sheet; ECMA-376. */
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet") {
        @Override
        public void write(Iterator<TreeView> trees, OutputStream out) throws IOException {
            Workbook book = new Workbook(out, "Bandtrail", null);
            Worksheet sheet = book.newWorksheet("Trees");
            for (TreeColumn column : COLUMNS) {
                sheet.value(0, column.ordinal(), column.field());
            }
            for (int row = 1; trees.hasNext(); row++) {
                cells(sheet, row, trees.next());
                if (row % FLUSHED == 0) {
                    sheet.flush();
                }
            }
            book.finish();
        }
    };

    private static final List<TreeColumn> COLUMNS = Arrays.asList(TreeColumn.values());
    private static final int FLUSHED = 500;
    private final String mediaType;

    TreeFormat(String mediaType) {
        this.mediaType = mediaType;
    }

    /** Its media type. */
    public String mediaType() {
        return mediaType;
    }

    /**
     * Writes trees as they come; the stream stays open.
     *
     * @throws IOException if nobody reads any more
     */
    public abstract void write(Iterator<TreeView> trees, OutputStream out) throws IOException;

    private static String text(@Nullable Object value) {
        return value instanceof BigDecimal number ? number.toPlainString() : value == null ? "" : value.toString();
    }

    private static void feature(JsonGenerator json, TreeView tree) {
        json.writeStartObject();
        json.writeStringProperty("type", "Feature");
        json.writeStringProperty("id", tree.treeId());
        if (tree.lat() == null || tree.lon() == null) {
            json.writeNullProperty("geometry");
        } else {
            json.writeObjectPropertyStart("geometry");
            json.writeStringProperty("type", "Point");
            json.writeArrayPropertyStart("coordinates");
            json.writeNumber(tree.lon());
            json.writeNumber(tree.lat());
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeObjectPropertyStart("properties");
        for (TreeColumn column : COLUMNS) {
            if (column != TreeColumn.LAT && column != TreeColumn.LON) {
                property(json, column, tree);
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void property(JsonGenerator json, TreeColumn column, TreeView tree) {
        switch (column.of(tree)) {
            case null -> json.writeNullProperty(column.field());
            case Long whole -> json.writeNumberProperty(column.field(), whole.longValue());
            case BigDecimal number -> json.writeNumberProperty(column.field(), number);
            case Object text -> json.writeStringProperty(column.field(), text.toString());
        }
    }

    private static void cells(Worksheet sheet, int row, TreeView tree) {
        for (TreeColumn column : COLUMNS) {
            switch (column.of(tree)) {
                case null -> {} // an empty cell
                case Number number -> sheet.value(row, column.ordinal(), number);
                case Object text -> sheet.value(row, column.ordinal(), text.toString());
            }
        }
    }
}
