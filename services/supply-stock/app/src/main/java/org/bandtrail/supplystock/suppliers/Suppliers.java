package org.bandtrail.supplystock.suppliers;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The register of suppliers and what they quoted. */
@Repository
public class Suppliers {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final String QUOTES = """
            SELECT q.*, b.from_units, b.unit_price FROM supplier_quote q
            CROSS JOIN LATERAL (SELECT array_agg(from_units ORDER BY from_units) AS from_units,
                    array_agg(unit_price ORDER BY from_units) AS unit_price FROM supplier_price_break
                WHERE supplier_id = q.supplier_id AND quote = q.quote) b
            """;
    private final JdbcClient jdbc;
    private final ObjectProvider<Projectors> projectors;

    Suppliers(JdbcClient jdbc, ObjectProvider<Projectors> projectors) {
        this.jdbc = jdbc;
        this.projectors = projectors;
    }

    /** One page of suppliers by identity. */
    public List<SupplierRow> page(@Nullable String after, int limit) {
        return jdbc.sql("""
                        SELECT s.supplier_id, s.name, (SELECT count(*) FROM supplier_quote q
                            WHERE q.supplier_id = s.supplier_id AND NOT q.withdrawn)
                        FROM supplier s WHERE (:after::varchar IS NULL OR s.supplier_id > :after)
                        ORDER BY s.supplier_id LIMIT :limit""")
                .param("after", after)
                .param("limit", limit)
                .query((row, number) -> new SupplierRow(row.getString(1), row.getString(2), row.getLong(3)))
                .list();
    }

    /** One supplier with its quotes, empty if it is not registered. */
    public Optional<SupplierRow.Whole> one(SupplierId supplier, LocalDate today) {
        return jdbc.sql("SELECT name FROM supplier WHERE supplier_id = ?")
                .param(supplier.value())
                .query(String.class)
                .optional()
                .map(name -> new SupplierRow.Whole(
                        supplier.value(),
                        name,
                        jdbc.sql(QUOTES + "WHERE q.supplier_id = ? ORDER BY q.quote DESC")
                                .param(supplier.value())
                                .query((row, number) -> quoted(row, today))
                                .list()));
    }

    /** What can be ordered of an item today, from any supplier; the cheapest content is for people to judge. */
    public List<SupplierRow.Quoted> quotesFor(MaterialCode material, LocalDate today) {
        return jdbc.sql(QUOTES + """
                        WHERE q.material = ? AND NOT q.withdrawn AND q.valid_from <= ?
                          AND (q.valid_until IS NULL OR q.valid_until >= ?)
                        ORDER BY q.supplier_id, q.quote DESC""")
                .params(material.value(), today, today)
                .query((row, number) -> quoted(row, today))
                .list();
    }

    /**
     * A quote by its number. One noted a moment ago may not be readable yet, so the answer waits for it.
     *
     * @throws SupplierRefused.QuoteUnknown if there is none
     */
    public Quote quote(SupplierId supplier, int number) {
        Optional<Quote> known = find(supplier, number);
        if (known.isEmpty() && projectors.getObject().caughtUp(PATIENCE)) {
            known = find(supplier, number);
        }
        return known.orElseThrow(() -> new SupplierRefused.QuoteUnknown(supplier, number));
    }

    /**
     * Checks that a supplier is registered, waiting for one registered a moment ago.
     *
     * @throws SupplierRefused.SupplierUnknown if it is not
     */
    public void needKnown(SupplierId supplier) {
        if (!known(supplier) && !(projectors.getObject().caughtUp(PATIENCE) && known(supplier))) {
            throw new SupplierRefused.SupplierUnknown(supplier);
        }
    }

    private boolean known(SupplierId supplier) {
        return jdbc.sql("SELECT 1 FROM supplier WHERE supplier_id = ?")
                .param(supplier.value())
                .query(Integer.class)
                .optional()
                .isPresent();
    }

    private Optional<Quote> find(SupplierId supplier, int number) {
        return jdbc.sql(QUOTES + "WHERE q.supplier_id = ? AND q.quote = ? AND NOT q.withdrawn")
                .params(supplier.value(), number)
                .query((row, count) -> quote(row))
                .optional();
    }

    private static Quote quote(ResultSet row) throws SQLException {
        return new Quote(
                new MaterialCode(row.getString("material")),
                MaterialKind.valueOf(row.getString("kind")),
                new Packing(OrderUnit.valueOf(row.getString("unit")), row.getLong("content")),
                row.getLong("pack_units"),
                row.getLong("minimum_units"),
                row.getInt("lead_time_days"),
                breaks(row),
                row.getString("currency"),
                row.getObject("valid_from", LocalDate.class),
                row.getObject("valid_until", LocalDate.class),
                row.getString("reference"));
    }

    private static List<PriceBreak> breaks(ResultSet row) throws SQLException {
        List<Long> from = Arrays.asList((Long[]) row.getArray("from_units").getArray());
        List<Long> price = Arrays.asList((Long[]) row.getArray("unit_price").getArray());
        List<PriceBreak> breaks = new ArrayList<>();
        for (int index = 0; index < from.size(); index++) {
            breaks.add(new PriceBreak(from.get(index), price.get(index)));
        }
        return breaks;
    }

    private static SupplierRow.Quoted quoted(ResultSet row, LocalDate today) throws SQLException {
        Quote quote = quote(row);
        OrderUnit unit = quote.packing().unit();
        boolean length = quote.kind().onReels();
        return new SupplierRow.Quoted(
                row.getString("supplier_id"),
                row.getInt("quote"),
                quote.material().value(),
                quote.kind(),
                unit.word(),
                unit.rec20(),
                unit.rec21(),
                length ? quote.packing().content() : null,
                length ? null : quote.packing().content(),
                quote.packUnits(),
                quote.minimumUnits(),
                quote.leadTimeDays(),
                quote.validFrom(),
                quote.validUntil(),
                quote.reference(),
                row.getBoolean("withdrawn"),
                !row.getBoolean("withdrawn") && quote.holdsOn(today),
                quote.breaks().stream()
                        .map(each ->
                                new SupplierRow.Price(each.fromUnits(), Money.of(each.unitPrice(), quote.currency())))
                        .toList());
    }
}
