package org.bandtrail.siteinstalls.trees;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.trees.TreeEvent.FoundAgain;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeCorrected;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeGone;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeMerged;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeUnmerged;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of trees and their history, a page at a time. */
@Component
final class TreeProjection implements Projection {
    private final JdbcClient jdbc;
    private final TreeTable table;

    TreeProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.table = new TreeTable(jdbc);
    }

    /** One line of the history and where it came from. */
    private record Line(long position, TreeId tree, TreeStep step) {}

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
        Map<TreeId, TreeDetails> corrected = new LinkedHashMap<>();
        Map<TreeId, @Nullable TreeGone> gone = new LinkedHashMap<>();
        Map<TreeId, @Nullable TreeMerged> merged = new LinkedHashMap<>();
        List<TreeUnmerged> parted = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (StoredEvent stored : page) {
            TreeEvent event = (TreeEvent) stored.payload();
            switch (event) {
                case TreeRegistered tree -> registered.add(tree);
                case TreeCorrected tree -> corrected.put(tree.treeId(), tree.after());
                case TreeGone tree -> gone.put(tree.treeId(), tree);
                case FoundAgain tree -> gone.put(tree.treeId(), null);
                case TreeMerged tree -> merged.put(tree.treeId(), tree);
                case TreeUnmerged tree -> {
                    merged.put(tree.treeId(), null);
                    parted.add(tree);
                }
                case GirthMeasured girth -> {} // the line below is all of it; the latest is taken at the end
            }
            lines.add(new Line(stored.position(), event.treeId(), TreeStep.of(event)));
        }
        table.insert(registered);
        table.correct(corrected);
        table.mark(gone);
        table.merge(merged, parted);
        insertSteps(lines);
        table.takeLatestGirths(Stream.concat(
                        lines.stream().map(line -> line.tree().value()),
                        parted.stream().map(tree -> tree.kept().value()))
                .distinct()
                .toArray(String[]::new));
    }

    private void insertSteps(List<Line> lines) {
        jdbc.sql("""
                        INSERT INTO tree_step (position, tree_id, what, happened_at, recorded_at, by_person,
                                               girth_mm, girth_height_mm, band_id, note)
                        SELECT * FROM unnest(?::bigint[], ?::text[], ?::text[], ?::timestamptz[], ?::timestamptz[],
                                             ?::text[], ?::bigint[], ?::bigint[], ?::text[], ?::text[])
                        ON CONFLICT DO NOTHING""")
                .params(
                        lines.stream().map(Line::position).toArray(Long[]::new),
                        texts(lines, line -> line.tree().value()),
                        texts(lines, line -> line.step().what()),
                        texts(lines, line -> moment(line.step().when().happened())),
                        texts(lines, line -> moment(line.step().when().recorded())),
                        texts(lines, line -> line.step().by().value()),
                        lines.stream().map(line -> line.step().girthMm()).toArray(Long[]::new),
                        lines.stream().map(line -> line.step().heightMm()).toArray(Long[]::new),
                        lines.stream().map(line -> line.step().band()).toArray(String[]::new),
                        texts(lines, line -> line.step().note()))
                .update();
    }

    private static <T> String[] texts(List<T> rows, Function<T, String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }

    private static String moment(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC).toString();
    }
}
