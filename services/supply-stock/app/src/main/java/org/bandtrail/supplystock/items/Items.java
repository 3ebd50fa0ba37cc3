package org.bandtrail.supplystock.items;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of supply items. */
@Repository
public class Items {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    Items(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** All items, by code. */
    public List<ItemRow> all() {
        return jdbc.sql("SELECT * FROM item ORDER BY material")
                .query(Items::row)
                .list();
    }

    /** One item, empty if it is not registered. */
    public Optional<ItemRow> one(MaterialCode material) {
        return jdbc.sql("SELECT * FROM item WHERE material = ?")
                .param(material.value())
                .query(Items::row)
                .optional();
    }

    /**
     * The kind of an item. An item registered a moment ago may not be in the register yet, so the answer waits for it.
     *
     * @throws ItemRefused.ItemUnknown if nobody registered it
     */
    public MaterialKind kindOf(MaterialCode material) {
        return known(material).kind();
    }

    /**
     * An item that has to be registered, even if it was a moment ago.
     *
     * @throws ItemRefused.ItemUnknown if nobody registered it
     */
    public ItemRow known(MaterialCode material) {
        Optional<ItemRow> known = one(material);
        if (known.isEmpty() && projectors.getObject().caughtUp(PATIENCE)) {
            known = one(material);
        }
        return known.orElseThrow(() -> new ItemRefused.ItemUnknown(material));
    }

    private static ItemRow row(ResultSet row, int number) throws SQLException {
        return new ItemRow(
                row.getString("material"),
                MaterialKind.valueOf(row.getString("kind")),
                row.getString("name"),
                row.getObject("width_mm", Long.class),
                row.getObject("opening_mm", Long.class),
                row.getObject("reel_length_mm", Long.class),
                row.getObject("pack_size", Long.class),
                Money.of(row.getLong("unit_cost_minor"), row.getString("currency")),
                row.getInt("lead_time_days"),
                row.getInt("lead_time_sd_days"),
                row.getInt("service_level_permille"));
    }
}
