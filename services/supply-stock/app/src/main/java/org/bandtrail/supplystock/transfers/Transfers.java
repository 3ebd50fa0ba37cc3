package org.bandtrail.supplystock.transfers;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads transfers. */
@Repository
public class Transfers {
    private final JdbcClient jdbc;

    Transfers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * One page, the newest first.
     *
     * @param state only in this state, or null
     * @param before transfer before which the page begins, or null for the newest
     */
    public List<TransferRow> page(@Nullable String state, @Nullable String before, int limit) {
        List<TransferRow> heads = jdbc.sql("""
                        SELECT * FROM transfer
                        WHERE (:state::varchar IS NULL OR state = :state)
                          AND (:before::varchar IS NULL OR (sent_at, transfer_id) <
                              (SELECT sent_at, transfer_id FROM transfer WHERE transfer_id = :before))
                        ORDER BY sent_at DESC, transfer_id DESC LIMIT :limit""")
                .param("state", state)
                .param("before", before)
                .param("limit", limit)
                .query(Transfers::head)
                .list();
        return withLines(heads);
    }

    /** One transfer, empty if nobody sent it. */
    public Optional<TransferRow> one(TransferId transfer) {
        List<TransferRow> heads = jdbc.sql("SELECT * FROM transfer WHERE transfer_id = ?")
                .param(transfer.value())
                .query(Transfers::head)
                .list();
        return withLines(heads).stream().findFirst();
    }

    private List<TransferRow> withLines(List<TransferRow> heads) {
        record OfTransfer(String transfer, TransferRow.Line line) {}
        Map<String, List<TransferRow.Line>> lines = jdbc
                .sql("""
                        SELECT l.transfer_id, l.holding, l.id, coalesce(r.material, b.material) AS material, l.sent, l.arrived
                        FROM transfer_line l
                        LEFT JOIN reel_balance r ON l.holding = 'reel' AND r.id = l.id
                        LEFT JOIN batch_balance b ON l.holding = 'batch' AND b.id = l.id
                        WHERE l.transfer_id = ANY (?) ORDER BY l.holding DESC, l.id""")
                .param(heads.stream().map(TransferRow::transferId).toArray(String[]::new))
                .query((row, number) -> new OfTransfer(
                        row.getString(1),
                        new TransferRow.Line(
                                row.getString(2),
                                row.getString(3),
                                row.getString(4),
                                row.getLong(5),
                                row.getObject(6, Long.class))))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        OfTransfer::transfer, Collectors.mapping(OfTransfer::line, Collectors.toList())));
        return heads.stream()
                .map(head -> new TransferRow(
                        head.transferId(),
                        head.source(),
                        head.target(),
                        head.carrier(),
                        head.state(),
                        head.sentAt(),
                        head.sentBy(),
                        head.endedAt(),
                        head.endedBy(),
                        head.reason(),
                        head.oneHand(),
                        lines.getOrDefault(head.transferId(), List.of())))
                .toList();
    }

    private static TransferRow head(ResultSet row, int number) throws SQLException {
        OffsetDateTime ended = row.getObject("ended_at", OffsetDateTime.class);
        Instant endedAt = ended == null ? null : ended.toInstant();
        String sentBy = row.getString("sent_by");
        String endedBy = row.getString("ended_by");
        return new TransferRow(
                row.getString("transfer_id"),
                row.getString("source"),
                row.getString("target"),
                row.getString("carrier"),
                row.getString("state"),
                row.getObject("sent_at", OffsetDateTime.class).toInstant(),
                sentBy,
                endedAt,
                endedBy,
                row.getString("reason"),
                row.getString("state").equals("arrived") && sentBy.equals(endedBy),
                List.of());
    }
}
