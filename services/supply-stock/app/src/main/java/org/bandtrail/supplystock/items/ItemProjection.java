package org.bandtrail.supplystock.items;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Length;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of items. Items are few, so each event is one statement. */
@Component
final class ItemProjection implements Projection {
    private final JdbcClient jdbc;

    ItemProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "item";
    }

    @Override
    public List<String> tables() {
        return List.of("item");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ItemEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((ItemEvent) stored.payload()) {
                case ItemEvent.Registered registered -> insert(registered);
                case ItemEvent.Corrected corrected -> correct(corrected);
                case ItemEvent.SupplySet set ->
                    jdbc.sql("""
                                    UPDATE item SET lead_time_days = ?, lead_time_sd_days = ?, service_level_permille = ?
                                    WHERE material = ?""")
                            .params(
                                    set.supply().leadTimeDays(),
                                    set.supply().leadTimeSdDays(),
                                    set.supply().serviceLevelPermille(),
                                    set.material().value())
                            .update();
            }
        }
    }

    private void insert(ItemEvent.Registered registered) {
        ItemDescription item = registered.description();
        jdbc.sql("""
                        INSERT INTO item (material, kind, name, width_mm, opening_mm, reel_length_mm, pack_size,
                            unit_cost_minor, currency, lead_time_days, lead_time_sd_days, service_level_permille)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING""")
                .param(registered.material().value())
                .param(item.kind().name())
                .param(item.name())
                .param(mm(item.width()))
                .param(mm(item.opening()))
                .param(mm(item.reelLength()))
                .param(item.packSize() == null ? null : item.packSize().count())
                .param(item.unitCost().minor())
                .param(item.unitCost().currency())
                .param(registered.supply().leadTimeDays())
                .param(registered.supply().leadTimeSdDays())
                .param(registered.supply().serviceLevelPermille())
                .update();
    }

    private void correct(ItemEvent.Corrected corrected) {
        ItemDescription item = corrected.description();
        jdbc.sql("""
                        UPDATE item SET name = ?, width_mm = ?, opening_mm = ?, reel_length_mm = ?, pack_size = ?,
                            unit_cost_minor = ?, currency = ? WHERE material = ?""")
                .param(item.name())
                .param(mm(item.width()))
                .param(mm(item.opening()))
                .param(mm(item.reelLength()))
                .param(item.packSize() == null ? null : item.packSize().count())
                .param(item.unitCost().minor())
                .param(item.unitCost().currency())
                .param(corrected.material().value())
                .update();
    }

    private static @Nullable Long mm(@Nullable Length length) {
        return length == null ? null : length.mm();
    }
}
