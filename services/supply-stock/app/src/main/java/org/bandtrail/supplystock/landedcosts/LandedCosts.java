package org.bandtrail.supplystock.landedcosts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The landed costs, newest first. */
@Repository
public class LandedCosts {
    private final JdbcClient jdbc;

    LandedCosts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One landed cost.
     *
     * @param what FREIGHT or DUTY
     * @param basis VALUE, LENGTH or COUNT
     * @param deliveries the deliveries it went to, in words
     * @param takenBackBecause why it was taken back, or null
     */
    public record Row(
            String landedCostId,
            String what,
            Money amount,
            String basis,
            String deliveries,
            @Nullable String invoiceId,
            String reference,
            String byPerson,
            Instant spreadAt,
            @Nullable String takenBackBecause) {}

    /** A landed cost with what each reel and batch bears. */
    public record Whole(Row landedCost, List<LandedShare> shares) {}

    /**
     * One page.
     *
     * @param before landed cost before which the page begins, or null for the newest
     */
    public List<Row> page(@Nullable String before, int limit) {
        return jdbc.sql("""
                        SELECT * FROM landed_cost
                        WHERE :before::varchar IS NULL OR (spread_at, landed_cost_id) <
                              (SELECT spread_at, landed_cost_id FROM landed_cost WHERE landed_cost_id = :before)
                        ORDER BY spread_at DESC, landed_cost_id DESC LIMIT :limit""")
                .param("before", before)
                .param("limit", limit)
                .query(LandedCosts::row)
                .list();
    }

    /** One landed cost, empty if nothing was spread under this identity. */
    public Optional<Whole> whole(LandedCostId id) {
        return jdbc.sql("SELECT * FROM landed_cost WHERE landed_cost_id = ?")
                .param(id.value())
                .query(LandedCosts::row)
                .optional()
                .map(row -> new Whole(row, shares(row)));
    }

    private List<LandedShare> shares(Row of) {
        return jdbc.sql("SELECT * FROM landed_share WHERE landed_cost_id = ? ORDER BY delivery_id, line, holding, id")
                .param(of.landedCostId())
                .query((row, number) -> new LandedShare(
                        row.getString("delivery_id"),
                        row.getInt("line"),
                        row.getString("holding").equals("reel"),
                        row.getString("id"),
                        Money.of(row.getLong("amount_minor"), of.amount().currency())))
                .list();
    }

    private static Row row(ResultSet row, int number) throws SQLException {
        return new Row(
                row.getString("landed_cost_id"),
                row.getString("what"),
                Money.of(row.getLong("amount_minor"), row.getString("currency")),
                row.getString("basis"),
                row.getString("deliveries"),
                row.getString("invoice_id"),
                row.getString("reference"),
                row.getString("by_person"),
                row.getObject("spread_at", OffsetDateTime.class).toInstant(),
                row.getString("taken_back_because"));
    }
}
