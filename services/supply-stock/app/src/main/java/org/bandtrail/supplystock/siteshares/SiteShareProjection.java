package org.bandtrail.supplystock.siteshares;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps who pays for which site from when. */
@Component
final class SiteShareProjection implements Projection {
    private final JdbcClient jdbc;

    SiteShareProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "site-share";
    }

    @Override
    public List<String> tables() {
        return List.of("site_share_version", "site_share");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(SiteShareEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((SiteShareEvent) stored.payload()) {
                case SiteShareEvent.SharesSet set -> replace(set);
            }
        }
    }

    private void replace(SiteShareEvent.SharesSet set) {
        String site = set.siteId().value();
        LocalDate from = set.from().atDay(1);
        jdbc.sql("""
                        INSERT INTO site_share_version (site_id, from_month, by_person, at) VALUES (?, ?, ?, ?)
                        ON CONFLICT (site_id, from_month) DO UPDATE
                        SET by_person = EXCLUDED.by_person, at = EXCLUDED.at""")
                .params(site, from, set.by().value(), set.occurred().recorded().atOffset(ZoneOffset.UTC))
                .update();
        jdbc.sql("DELETE FROM site_share WHERE site_id = ? AND from_month = ?")
                .params(site, from)
                .update();
        jdbc.sql("""
                        INSERT INTO site_share (site_id, from_month, grant_id, permille)
                        SELECT ?, ?, * FROM unnest(?::varchar[], ?::integer[])""")
                .params(
                        site,
                        from,
                        set.shares().stream()
                                .map(share -> share.grantId().value())
                                .toArray(String[]::new),
                        set.shares().stream().map(GrantShare::permille).toArray(Integer[]::new))
                .update();
    }
}
