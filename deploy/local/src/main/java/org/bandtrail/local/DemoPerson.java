package org.bandtrail.local;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Somebody who can sign in at the front desk.
 *
 * @param username what is typed at the sign-in
 * @param personId the pseudonymous identity used in events
 * @param name the name shown on pages
 * @param role DEPOT, CREW, FINANCE or LEAD
 */
record DemoPerson(String username, String personId, String name, String role) {

    /** The one person of an installation that starts empty; creates the others on the page of people. */
    static final DemoPerson FIRST_LEAD = new DemoPerson("lead", "P-LEAD", "First lead", "LEAD");

    /**
     * The people of the demo season.
     *
     * @param demoData the folder of the season
     * @return everybody in {@code people.csv}, in the order of the file
     * @throws CannotStart if the file cannot be read
     */
    static List<DemoPerson> all(Path demoData) {
        Path file = demoData.resolve("people.csv");
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(file)) {
            return rows.stream()
                    .map(row -> new DemoPerson(
                            row.getField("username"),
                            row.getField("personId"),
                            row.getField("name"),
                            row.getField("role").toUpperCase(Locale.ROOT)))
                    .toList();
        } catch (IOException e) {
            throw new CannotStart("The people of the demo season cannot be read from " + file + ": " + e
                    + ". Start with --empty, or say where the season is with --demo-data.");
        }
    }
}
