package org.bandtrail.local.season;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A file of the season read into rows that know where they stand, so that an error can name file and row. */
final class CsvRows {
    private CsvRows() {}

    /** Reads all rows of a file with a header line. */
    static List<Row> read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file);
                Stream<NamedCsvRecord> records = reader.stream()) {
            return records.map(found -> new Row(name, found.getStartingLineNumber(), found.getFieldsAsMap()))
                    .toList();
        }
    }
}
