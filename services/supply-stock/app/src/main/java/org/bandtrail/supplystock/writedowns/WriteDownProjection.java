package org.bandtrail.supplystock.writedowns;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every write-down of a reel or batch. */
@Component
final class WriteDownProjection implements Projection {
    private final JdbcClient jdbc;

    WriteDownProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "write-down";
    }

    @Override
    public List<String> tables() {
        return List.of("write_down");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            if (stored.payload() instanceof ReelEvent.WrittenDown down) {
                insert(stored.position(), "reel", down.reelId().value(), down.amount(), down.reason(), down.entry());
            } else if (stored.payload() instanceof BatchEvent.WrittenDown down) {
                insert(stored.position(), "batch", down.batchId().value(), down.amount(), down.reason(), down.entry());
            }
        }
    }

    private void insert(long position, String holding, String id, Money amount, String reason, Entry entry) {
        jdbc.sql("""
                        INSERT INTO write_down (position, holding, id, amount_minor, currency, reason, by_person,
                            happened_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        position,
                        holding,
                        id,
                        amount.minor(),
                        amount.currency(),
                        reason,
                        entry.by().value(),
                        entry.occurred().happened().atOffset(ZoneOffset.UTC))
                .update();
    }
}
