package org.bandtrail.siteinstalls.knownreels;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.ReelId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The reels heard of. */
@Repository
public class KnownReels {
    private final JdbcClient jdbc;

    KnownReels(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Remembers a reel; telling it again changes nothing, telling it otherwise corrects it. */
    public void remember(KnownReel reel) {
        Length opening = reel.opening();
        jdbc.sql("""
                        INSERT INTO known_reel (reel_id, material_code, kind, width_mm, opening_mm)
                        VALUES (?, ?, ?, ?, ?)
                        ON CONFLICT (reel_id) DO UPDATE SET material_code = excluded.material_code,
                            kind = excluded.kind, width_mm = excluded.width_mm, opening_mm = excluded.opening_mm""")
                .param(reel.reelId().value())
                .param(reel.materialCode().value())
                .param(reel.kind().name())
                .param(reel.width().mm())
                .param(opening == null ? null : opening.mm())
                .update();
    }

    /** What is known of these reels. */
    public Map<ReelId, KnownReel> known(Collection<ReelId> reels) {
        return jdbc
                .sql("SELECT * FROM known_reel WHERE reel_id = ANY (?)")
                .param(reels.stream().map(ReelId::value).distinct().toArray(String[]::new))
                .query(KnownReels::row)
                .list()
                .stream()
                .collect(Collectors.toMap(KnownReel::reelId, reel -> reel));
    }

    private static KnownReel row(ResultSet row, int number) throws SQLException {
        Long opening = row.getObject("opening_mm", Long.class);
        return new KnownReel(
                new ReelId(row.getString("reel_id")),
                new MaterialCode(row.getString("material_code")),
                MaterialKind.valueOf(row.getString("kind")),
                Length.ofMm(row.getLong("width_mm")),
                opening == null ? null : Length.ofMm(opening));
    }
}
