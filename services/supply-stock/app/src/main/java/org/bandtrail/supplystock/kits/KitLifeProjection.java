package org.bandtrail.supplystock.kits;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.supplystock.handouts.KitEvent;
import org.bandtrail.supplystock.kitlists.Cut;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.Pick;
import org.bandtrail.supplystock.kitlists.TreeNeed;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the life of each kit, its trees and what was chosen for it. A kit is few events, so each is written alone. */
@Component
final class KitLifeProjection implements Projection {
    private final JdbcClient jdbc;

    KitLifeProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "kit-life";
    }

    @Override
    public List<String> tables() {
        return List.of("kit_life", "kit_tree", "kit_pick", "kit_cut");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(KitEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((KitEvent) stored.payload()) {
                case KitEvent.Reserved reserved -> reserved(reserved);
                case KitEvent.Released released ->
                    jdbc.sql("UPDATE kit_life SET released_at = ?, release_reason = ? WHERE kit_id = ?")
                            .param(time(released.occurred().happened()))
                            .param(released.reason())
                            .param(released.kitId().value())
                            .update();
                case KitEvent.HandedOut out -> handedOut(out);
                case KitEvent.Signed signed ->
                    jdbc.sql("UPDATE kit_life SET signed_at = ?, signed_by = ? WHERE kit_id = ?")
                            .params(
                                    time(signed.occurred().happened()),
                                    signed.person().value(),
                                    signed.kitId().value())
                            .update();
            }
        }
    }

    private void handedOut(KitEvent.HandedOut out) {
        OffsetDateTime happened = time(out.occurred().happened());
        jdbc.sql("""
            INSERT INTO kit_life (kit_id, depot_id, crew_id, person_id, began_at, handed_out_at, handed_out_by)
            VALUES (?, ?, ?, ?, ?, ?, ?)
            ON CONFLICT (kit_id) DO UPDATE SET person_id = EXCLUDED.person_id, crew_id = EXCLUDED.crew_id,
                handed_out_at = EXCLUDED.handed_out_at, handed_out_by = EXCLUDED.handed_out_by\
            """)
                .params(
                        out.kitId().value(),
                        out.depot().value(),
                        out.crew().value(),
                        out.person().value(),
                        happened,
                        happened,
                        out.by().value())
                .update();
    }

    private void reserved(KitEvent.Reserved reserved) {
        OffsetDateTime happened = time(reserved.occurred().happened());
        jdbc.sql("""
            INSERT INTO kit_life (kit_id, depot_id, crew_id, person_id, began_at, reserved_at, reserved_by,
                until, rule)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING\
            """)
                .params(
                        reserved.kitId().value(),
                        reserved.depot().value(),
                        reserved.crew().value(),
                        reserved.person().value(),
                        happened,
                        happened,
                        reserved.by().value(),
                        time(reserved.until()),
                        inWords(reserved.rule()))
                .update();
        String kit = reserved.kitId().value();
        insertTrees(kit, reserved.trees());
        insertPicks(kit, reserved.picks());
        for (int pick = 0; pick < reserved.picks().size(); pick++) {
            insertCuts(kit, pick + 1, reserved.picks().get(pick).cuts());
        }
    }

    private void insertTrees(String kit, List<TreeNeed> trees) {
        jdbc.sql("""
            INSERT INTO kit_tree (kit_id, step, tree_id, girth_mm, bands, tape_mm, mesh_mm, fasteners)
            SELECT ?, * FROM unnest(?::integer[], ?::varchar[], ?::bigint[], ?::integer[], ?::bigint[],
                ?::bigint[], ?::bigint[]) ON CONFLICT DO NOTHING\
            """)
                .params(
                        kit,
                        steps(trees),
                        texts(trees, tree -> tree.tree().value()),
                        numbers(
                                trees,
                                tree -> tree.girth() == null
                                        ? null
                                        : tree.girth().mm()),
                        numbers(trees, tree -> (long) tree.bands()),
                        numbers(trees, tree -> tree.tape().mm()),
                        numbers(trees, tree -> tree.mesh().mm()),
                        numbers(trees, tree -> tree.fasteners().count()))
                .update();
    }

    private void insertPicks(String kit, List<Pick> picks) {
        jdbc.sql("""
            INSERT INTO kit_pick (kit_id, step, id, material, kind, place, there, quantity)
            SELECT ?, * FROM unnest(?::integer[], ?::varchar[], ?::varchar[], ?::varchar[], ?::varchar[],
                ?::bigint[], ?::bigint[]) ON CONFLICT DO NOTHING\
            """)
                .params(
                        kit,
                        steps(picks),
                        texts(picks, Pick::id),
                        texts(picks, pick -> pick.material().value()),
                        texts(picks, pick -> pick.kind().name()),
                        texts(picks, pick -> pick.place().toString()),
                        numbers(picks, Pick::there),
                        numbers(picks, Pick::quantity))
                .update();
    }

    private void insertCuts(String kit, int pick, List<Cut> cuts) {
        jdbc.sql("""
            INSERT INTO kit_cut (kit_id, pick, step, tree_id, pieces, each_mm)
            SELECT ?, ?, * FROM unnest(?::integer[], ?::varchar[], ?::integer[], ?::bigint[])
            ON CONFLICT DO NOTHING\
            """)
                .params(
                        kit,
                        pick,
                        steps(cuts),
                        texts(cuts, cut -> cut.tree().value()),
                        numbers(cuts, cut -> (long) cut.pieces()),
                        numbers(cuts, cut -> cut.each().mm()))
                .update();
    }

    private static String inWords(KitRule rule) {
        return "tape = girth + %s + 2 tabs of %s; mesh = girth + %s; one fastener in %s of girth, at least %d (%s)"
                .formatted(
                        rule.overlap(),
                        rule.tab(),
                        rule.meshExtra(),
                        rule.spacing(),
                        rule.fewest().count(),
                        rule.source());
    }

    private static OffsetDateTime time(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }

    private static Integer[] steps(List<?> rows) {
        return IntStream.rangeClosed(1, rows.size()).boxed().toArray(Integer[]::new);
    }

    private static <T> String[] texts(List<T> rows, Function<T, String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    private static <T> Long[] numbers(List<T> rows, Function<T, @Nullable Long> column) {
        return rows.stream().map(column).toArray(Long[]::new);
    }
}
