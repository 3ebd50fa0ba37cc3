package org.bandtrail.supplystock.whereabouts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Learns from fitted tape and mesh which tree stands on which site: the site that pays for what went to the tree. */
@Component
final class TreeSiteProjection implements Projection {
    private static final String SITE = "site:";
    private final JdbcClient jdbc;

    TreeSiteProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "tree-site";
    }

    @Override
    public List<String> tables() {
        return List.of("tree_site");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        Map<String, String> siteOfTree = new LinkedHashMap<>();
        for (StoredEvent stored : page) {
            if (stored.payload() instanceof ReelEvent.LengthFitted fitted) {
                learn(fitted.entry(), siteOfTree);
            }
        }
        if (siteOfTree.isEmpty()) {
            return;
        }
        jdbc.sql("""
                        INSERT INTO tree_site (tree_id, site_id) SELECT * FROM unnest(?::varchar[], ?::varchar[])
                        ON CONFLICT (tree_id) DO UPDATE SET site_id = EXCLUDED.site_id""")
                .params(
                        siteOfTree.keySet().toArray(String[]::new),
                        siteOfTree.values().toArray(String[]::new))
                .update();
    }

    private static void learn(Entry entry, Map<String, String> siteOfTree) {
        for (Charge charge : entry.charges()) {
            if (!charge.account().startsWith(SITE)) {
                continue;
            }
            for (Move move : entry.moves()) {
                if (move.target().kind() == PlaceKind.TREE) {
                    siteOfTree.put(move.target().id(), charge.account().substring(SITE.length()));
                }
            }
        }
    }
}
