package org.bandtrail.inspections.bands;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.ObjectMapper;

/** Keeps what is known of every band: where it hangs, its visits, its moves. A page applied twice changes nothing. */
@Component
final class BandProjection implements Projection {
    private final BandTables bands;
    private final VisitTable visits;

    BandProjection(JdbcClient jdbc, ObjectMapper json) {
        this.bands = new BandTables(jdbc);
        this.visits = new VisitTable(jdbc, json);
    }

    @Override
    public String name() {
        return "bands";
    }

    @Override
    public List<String> tables() {
        return List.of("watched_band", "band_visit", "bycatch_outcome", "band_renewal", "band_move");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(BandEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        bands.add(page);
        visits.add(of(BandEvent.Visited.class, page));
        visits.close(of(BandEvent.BycatchClosed.class, page));
        visits.renew(of(BandEvent.PiecesReplaced.class, page));
    }

    private static <E extends BandEvent> List<E> of(Class<E> kind, List<StoredEvent> page) {
        return page.stream()
                .map(StoredEvent::payload)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }
}
