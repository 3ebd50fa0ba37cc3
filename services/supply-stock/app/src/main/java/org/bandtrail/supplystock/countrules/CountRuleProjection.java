package org.bandtrail.supplystock.countrules;

import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every version of the rules of counting, in order. */
@Component
final class CountRuleProjection implements Projection {
    private final JdbcClient jdbc;

    CountRuleProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "count-rules";
    }

    @Override
    public List<String> tables() {
        return List.of("count_rules");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CountRuleEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CountRuleEvent) stored.payload()) {
                case CountRuleEvent.RulesSet set -> insert(stored.position(), set);
            }
        }
    }

    private void insert(long position, CountRuleEvent.RulesSet set) {
        CountRules rules = set.rules();
        jdbc.sql("""
                        INSERT INTO count_rules (position, tolerance_mm, tolerance_pieces, tolerance_permille,
                            second_person_from_minor, basis, share_a, share_b, days_a, days_b, days_c, source, reason,
                            by_person, set_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .params(
                        position,
                        rules.toleranceMm(),
                        rules.tolerancePieces(),
                        rules.tolerancePermille(),
                        rules.secondPersonFromMinor(),
                        rules.basis().name(),
                        rules.shareA(),
                        rules.shareB(),
                        rules.daysA(),
                        rules.daysB(),
                        rules.daysC(),
                        set.source(),
                        set.reason(),
                        set.by().value(),
                        set.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
    }
}
