package org.bandtrail.siteinstalls.consents;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Rows of the consent table as records. */
final class ConsentRows {
    static final String SELECT = """
            SELECT consent.*, coalesce(site.name, consent.site_id) AS site_name
            FROM consent LEFT JOIN site ON site.site_id = consent.site_id
            """;

    private ConsentRows() {}

    static ConsentView view(ResultSet row, int number) throws SQLException {
        @Nullable OffsetDateTime asked = row.getObject("asked_at", OffsetDateTime.class);
        return new ConsentView(
                row.getString("consent_id"),
                row.getString("site_id"),
                row.getString("site_name"),
                row.getString("state"),
                new ConsentScope(
                        texts(row.getArray("activities")).stream()
                                .map(Activity::valueOf)
                                .toList(),
                        texts(row.getArray("pests")),
                        row.getString("area")),
                row.getString("contact_id"),
                asked == null ? null : asked.toInstant(),
                row.getObject("valid_from", LocalDate.class),
                row.getObject("valid_until", LocalDate.class),
                row.getObject("withdrawn_from", LocalDate.class),
                row.getString("note"));
    }

    private static List<String> texts(Array array) throws SQLException {
        return Arrays.asList((String[]) array.getArray());
    }
}
