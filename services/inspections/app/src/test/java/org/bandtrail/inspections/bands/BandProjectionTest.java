package org.bandtrail.inspections.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.inspections.bands.BandSamples.fitted;
import static org.bandtrail.inspections.bands.BandSamples.mesh;
import static org.bandtrail.inspections.bands.BandSamples.renewed;
import static org.bandtrail.inspections.bands.BandSamples.tape;
import static org.bandtrail.inspections.bands.BandSamples.told;
import static org.bandtrail.inspections.bands.BandSamples.tornDown;
import static org.bandtrail.inspections.bands.BandSamples.visited;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.inspections.OnPostgres;
import org.bandtrail.inspections.pieces.Onward;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@OnPostgres
class BandProjectionTest {
    @Autowired
    BandProjection projection;

    @Autowired
    JdbcClient jdbc;

    private static List<StoredEvent> page() {
        List<BandEvent> events = told(
                fitted(1, tape("R-1", 1200), mesh("M-1", 1400)),
                visited("V-1", 3, BandSamples.NOTHING_CAUGHT),
                renewed("V-2", 5, "BAG-1", Onward.REUSE, tape("R-2", 1210), mesh("M-2", 1400)),
                tornDown("TD-1", 9, "BAG-2", Onward.BAG, Onward.BAG));
        List<StoredEvent> page = new ArrayList<>();
        for (BandEvent event : events) {
            page.add(new StoredEvent(page.size() + 1, new UUID(7, page.size()), "band/B-1", page.size(), event));
        }
        return page;
    }

    private record Rows(
            List<Map<String, Object>> band, List<Map<String, Object>> visits, List<Map<String, Object>> moves) {}

    private Rows rows() {
        return new Rows(
                all("SELECT * FROM watched_band WHERE band_id = 'B-1'"),
                all("SELECT band_id, visit_id, answer, catch_total, happened_at FROM band_visit WHERE band_id = 'B-1'"
                        + " ORDER BY visit_id"),
                all("SELECT * FROM band_move WHERE band_id = 'B-1' ORDER BY event_id, line"));
    }

    private List<Map<String, Object>> all(String sql) {
        return jdbc.sql(sql).query().listOfRows();
    }

    @Test
    void a_page_applied_twice_in_one_piece_or_event_by_event_gives_the_same_rows() {
        projection.apply(page());
        var once = rows();
        assertThat(once.visits()).hasSize(2);
        assertThat(once.moves()).hasSize(8);
        assertThat(once.band().getFirst()).containsEntry("tree_id", "T-1");

        projection.apply(page());
        assertThat(rows()).isEqualTo(once);

        page().reversed().forEach(event -> projection.apply(List.of(event)));
        assertThat(rows()).isEqualTo(once);
    }
}
