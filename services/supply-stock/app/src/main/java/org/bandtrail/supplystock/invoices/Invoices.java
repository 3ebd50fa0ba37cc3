package org.bandtrail.supplystock.invoices;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The invoices, newest first. */
@Repository
public class Invoices {
    private final JdbcClient jdbc;

    Invoices(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page.
     *
     * @param state one of the states, {@code open} for everything that waits for somebody, or null for all
     * @param text part of a number, an order or a supplier, or null
     * @param before invoice before which the page begins, or null for the newest
     */
    public List<InvoiceRow> page(
            @Nullable String state,
            @Nullable String supplier,
            @Nullable String text,
            @Nullable String before,
            int limit) {
        return jdbc.sql("""
                        SELECT * FROM invoice
                        WHERE (:state::varchar IS NULL OR state = :state
                               OR :state = 'open' AND state NOT IN ('approved', 'withdrawn'))
                          AND (:supplier::varchar IS NULL OR supplier_id = :supplier)
                          AND (:text::varchar IS NULL OR number ILIKE '%' || :text || '%'
                               OR order_text ILIKE '%' || :text || '%' OR supplier_id ILIKE '%' || :text || '%')
                          AND (:before::varchar IS NULL OR (registered_at, invoice_id) <
                               (SELECT registered_at, invoice_id FROM invoice WHERE invoice_id = :before))
                        ORDER BY registered_at DESC, invoice_id DESC LIMIT :limit""")
                .param("state", state)
                .param("supplier", supplier)
                .param("text", text)
                .param("before", before)
                .param("limit", limit)
                .query(Invoices::row)
                .list();
    }

    /** One invoice with everything about it, empty if it is not kept. */
    public Optional<InvoiceRow.Whole> whole(InvoiceId id) {
        return jdbc.sql("SELECT * FROM invoice WHERE invoice_id = ?")
                .param(id.value())
                .query(Invoices::row)
                .optional()
                .map(row -> new InvoiceRow.Whole(row, lines(row), charges(row), history(id)));
    }

    /** Papers of a supplier with this number, whatever their amounts; withdrawn ones left out. */
    public List<InvoiceRow> numbered(String supplier, String number) {
        return jdbc.sql("""
                        SELECT * FROM invoice
                        WHERE supplier_id = ? AND upper(number) = upper(?) AND state <> 'withdrawn'
                        ORDER BY registered_at""").params(supplier, number).query(Invoices::row).list();
    }

    private List<InvoiceRow.Line> lines(InvoiceRow invoice) {
        String currency = invoice.payable().currency();
        return jdbc.sql("SELECT * FROM invoice_line WHERE invoice_id = ? ORDER BY position")
                .param(invoice.invoiceId())
                .query((row, number) -> line(row, currency))
                .list();
    }

    private static InvoiceRow.Line line(ResultSet row, String currency) throws SQLException {
        Long payNet = row.getObject("pay_net_minor", Long.class);
        return new InvoiceRow.Line(
                row.getString("line"),
                row.getString("item"),
                row.getString("sellers_item"),
                row.getString("quantity"),
                row.getString("unit"),
                row.getString("price"),
                row.getString("per_quantity"),
                Money.of(row.getLong("amount_minor"), currency),
                Money.of(row.getLong("net_minor"), currency),
                row.getString("line_use"),
                row.getString("purchase_id"),
                row.getObject("purchase_line", Integer.class),
                row.getObject("link_quantity", Long.class),
                row.getString("standing"),
                row.getString("reason"),
                row.getObject("pay_quantity", Long.class),
                payNet == null ? null : Money.of(payNet, currency));
    }

    private List<InvoiceRow.Charge> charges(InvoiceRow invoice) {
        String currency = invoice.payable().currency();
        return jdbc.sql("SELECT * FROM invoice_charge WHERE invoice_id = ? ORDER BY number")
                .param(invoice.invoiceId())
                .query((row, number) -> new InvoiceRow.Charge(
                        row.getInt("number"), row.getString("reason"), Money.of(row.getLong("amount_minor"), currency)))
                .list();
    }

    private List<InvoiceRow.Happened> history(InvoiceId id) {
        return jdbc.sql("SELECT * FROM invoice_history WHERE invoice_id = ? ORDER BY position")
                .param(id.value())
                .query((row, number) -> new InvoiceRow.Happened(
                        row.getString("what"), row.getString("note"), row.getString("by_person"), instant(row, "at")))
                .list();
    }

    private static InvoiceRow row(ResultSet row, int number) throws SQLException {
        String currency = row.getString("currency");
        return new InvoiceRow(
                row.getString("invoice_id"),
                row.getString("supplier_id"),
                row.getString("kind"),
                row.getString("number"),
                row.getObject("issued_on", LocalDate.class),
                row.getObject("due_on", LocalDate.class),
                row.getString("credits"),
                row.getString("order_text"),
                Money.of(row.getLong("tax_minor"), currency),
                Money.of(row.getLong("payable_minor"), currency),
                Money.of(row.getLong("approved_minor"), currency),
                Money.of(row.getLong("spread_minor"), currency),
                row.getString("state"),
                row.getString("held_because"),
                row.getString("first_by"),
                row.getString("withdrawn"),
                row.getString("source"),
                instant(row, "registered_at"));
    }

    private static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
