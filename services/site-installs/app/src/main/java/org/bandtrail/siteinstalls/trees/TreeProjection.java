package org.bandtrail.siteinstalls.trees;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of trees and their history, a page at a time. */
@Component
final class TreeProjection implements Projection {
    private final JdbcClient jdbc;

    TreeProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** One line of the history. */
    private record Step(
            long position,
            String tree,
            String what,
            Occurred when,
            String by,
            @Nullable Long girthMm,
            @Nullable Long heightMm,
            @Nullable String band,
            String note) {}

    @Override
    public String name() {
        return "tree";
    }

    @Override
    public List<String> tables() {
        return List.of("tree", "tree_step");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(TreeEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        List<TreeRegistered> registered = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        for (StoredEvent stored : page) {
            switch ((TreeEvent) stored.payload()) {
                case TreeRegistered tree -> {
                    registered.add(tree);
                    steps.add(new Step(
                            stored.position(),
                            tree.treeId().value(),
                            "registered",
                            tree.when(),
                            tree.by().value(),
                            null,
                            null,
                            null,
                            "tag " + tree.tag()));
                }
                case GirthMeasured girth ->
                    steps.add(new Step(
                            stored.position(),
                            girth.treeId().value(),
                            girth.whileFitting() == null ? "girth measured" : "girth measured while fitting",
                            girth.when(),
                            girth.by().value(),
                            girth.girth().mm(),
                            girth.height() == null ? null : girth.height().mm(),
                            girth.whileFitting() == null ? null : girth.whileFitting().value(),
                            "%s %s"
                                    .formatted(
                                            girth.written().text(),
                                            girth.written().basis().word())));
            }
        }
        insertTrees(registered);
        insertSteps(steps);
        takeLatestGirths(steps);
    }

    private void insertTrees(List<TreeRegistered> registered) {
        jdbc.sql("""
                        INSERT INTO tree (tree_id, site_id, tag, species, species_code, latitude_e7, longitude_e7,
                                          note, registered_at)
                        SELECT * FROM unnest(?::text[], ?::text[], ?::text[], ?::text[], ?::text[], ?::integer[],
                                             ?::integer[], ?::text[], ?::timestamptz[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        texts(registered, tree -> tree.treeId().value()),
                        texts(registered, tree -> tree.siteId().value()),
                        texts(registered, TreeRegistered::tag),
                        texts(registered, TreeRegistered::species),
                        registered.stream().map(TreeProjection::code).toArray(String[]::new),
                        registered.stream()
                                .map(tree -> coordinate(tree.position(), Point::latitudeE7))
                                .toArray(Integer[]::new),
                        registered.stream()
                                .map(tree -> coordinate(tree.position(), Point::longitudeE7))
                                .toArray(Integer[]::new),
                        texts(registered, TreeRegistered::note),
                        texts(registered, tree -> moment(tree.when().happened())))
                .update();
    }

    private void insertSteps(List<Step> steps) {
        jdbc.sql("""
                        INSERT INTO tree_step (position, tree_id, what, happened_at, recorded_at, by_person,
                                               girth_mm, girth_height_mm, band_id, note)
                        SELECT * FROM unnest(?::bigint[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[],
                                             ?::text[], ?::bigint[], ?::bigint[], ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        steps.stream().map(Step::position).toArray(Long[]::new),
                        texts(steps, Step::tree),
                        texts(steps, Step::what),
                        texts(steps, step -> moment(step.when().happened())),
                        texts(steps, step -> moment(step.when().recorded())),
                        texts(steps, Step::by),
                        steps.stream().map(Step::girthMm).toArray(Long[]::new),
                        steps.stream().map(Step::heightMm).toArray(Long[]::new),
                        steps.stream().map(Step::band).toArray(String[]::new),
                        texts(steps, Step::note))
                .update();
    }

    /** The girth that was measured last counts, of two at one moment the one told later, as in {@link Tree}. */
    private void takeLatestGirths(List<Step> steps) {
        jdbc.sql("""
                        UPDATE tree SET girth_mm = latest.girth_mm, girth_measured_at = latest.happened_at,
                                        girth_height_mm = latest.girth_height_mm
                        FROM (SELECT DISTINCT ON (tree_id) tree_id, girth_mm, girth_height_mm, happened_at
                              FROM tree_step
                              WHERE tree_id = ANY (?) AND girth_mm IS NOT NULL
                              ORDER BY tree_id, happened_at DESC, position DESC) AS latest
                        WHERE tree.tree_id = latest.tree_id""").param(texts(steps, Step::tree)).update();
    }

    private static @Nullable String code(TreeRegistered tree) {
        return tree.speciesCode() == null ? null : tree.speciesCode().value();
    }

    private static @Nullable Integer coordinate(@Nullable Point point, ToIntFunction<Point> part) {
        return point == null ? null : part.applyAsInt(point);
    }

    private static <T> String[] texts(List<T> rows, Function<T, String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }

    private static String moment(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC).toString();
    }
}
