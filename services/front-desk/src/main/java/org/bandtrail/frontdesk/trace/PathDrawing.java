package org.bandtrail.frontdesk.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.depot.Traced;

/**
 * The way of a lot as threads: from the deliveries through each reel or batch to where it is now. A thread is as
 * thick as its share of all that is drawn; tape, mesh and pieces are compared by share of their own reel or batch,
 * because metres and pieces have no common measure. What would be too many rows is drawn as one.
 *
 * @param width of the view box
 * @param height of the view box
 */
public record PathDrawing(double width, double height, List<Thread> threads, List<Knot> knots) {
    private static final int ROWS = 9;
    private static final double PITCH = 34;
    private static final double TOP = 22;
    private static final double[] COLUMNS = {150, 420, 700};
    private static final double THICK = 22;
    private static final double HAIRLINE = 1.5;

    /** One thread between two knots. */
    public record Thread(String path, double thick, String look, String title) {}

    /** A point with a label; {@code end} labels stand right of it, the others left. */
    public record Knot(double x, double y, String label, boolean end) {}

    /** One row in the middle. */
    private record Row(String label, String origin, String look, Map<String, Double> shares) {}

    /** Draws the first reels and batches of a trace. */
    static PathDrawing of(List<Traced.Part> parts, long all) {
        List<Row> rows = rows(parts, all);
        List<String> origins = rows.stream().map(Row::origin).distinct().toList();
        List<String> stations = Stations.used(parts);
        int most = Math.max(Math.max(rows.size(), origins.size()), stations.size());
        List<Knot> knots = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        column(knots, origins, 0, most);
        column(knots, rows.stream().map(Row::label).toList(), 1, most);
        column(knots, stations, 2, most);
        double scale = THICK / Math.max(1, rows.size());
        for (int row = 0; row < rows.size(); row++) {
            Row each = rows.get(row);
            double y = y(row, rows.size(), most);
            double total =
                    each.shares().values().stream().mapToDouble(share -> share).sum();
            double from = y(origins.indexOf(each.origin()), origins.size(), most);
            threads.add(thread(0, from, y, total * scale, each.look(), each.origin() + " to " + each.label()));
            each.shares()
                    .forEach((station, share) -> threads.add(thread(
                            1,
                            y,
                            y(stations.indexOf(station), stations.size(), most),
                            share * scale,
                            each.look(),
                            each.label() + " " + station)));
        }
        return new PathDrawing(COLUMNS[2] + 160, TOP + most * PITCH, List.copyOf(threads), List.copyOf(knots));
    }

    private static List<Row> rows(List<Traced.Part> parts, long all) {
        List<Traced.Part> byAmount = parts.stream()
                .sorted(Comparator.comparingLong(Traced.Part::received).reversed())
                .toList();
        List<Row> rows = new ArrayList<>();
        Map<String, Double> others = new LinkedHashMap<>();
        boolean tooMany = all > ROWS;
        for (int index = 0; index < byAmount.size(); index++) {
            Traced.Part part = byAmount.get(index);
            Map<String, Double> shares = new LinkedHashMap<>();
            Stations.of(part)
                    .forEach((station, quantity) ->
                            shares.put(station, quantity / (double) Math.max(1, part.received())));
            if (!tooMany || index < ROWS - 1) {
                rows.add(new Row(part.id(), origin(part), look(part), shares));
            } else {
                shares.forEach((station, share) -> others.merge(station, share, Double::sum));
            }
        }
        if (tooMany) {
            Traced.Part last = byAmount.getLast();
            rows.add(new Row((all - ROWS + 1) + " others", origin(last), look(last), others));
        }
        return rows;
    }

    private static String origin(Traced.Part part) {
        return part.madeFrom() != null
                ? "slit from " + part.madeFrom()
                : part.lot() == null ? "lot not known" : "lot " + part.lot();
    }

    private static String look(Traced.Part part) {
        return part.holding().equals("batch") ? "fastener" : "MESH".equals(part.kind()) ? "mesh" : "tape";
    }

    private static void column(List<Knot> knots, List<String> labels, int column, int most) {
        for (int row = 0; row < labels.size(); row++) {
            knots.add(new Knot(COLUMNS[column], y(row, labels.size(), most), labels.get(row), column == 2));
        }
    }

    /** Rows of a shorter column are spread over the height of the longest. */
    private static double y(int row, int rows, int most) {
        return TOP + (row + 0.5) * PITCH * most / Math.max(1, rows) - PITCH / 2;
    }

    private static Thread thread(int column, double from, double to, double thick, String look, String title) {
        double left = COLUMNS[column] + 8;
        double right = COLUMNS[column + 1] - (column == 0 ? 96 : 8);
        double middle = (left + right) / 2;
        String path = String.format(
                Locale.ROOT,
                "M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f",
                left,
                from,
                middle,
                from,
                middle,
                to,
                right,
                to);
        return new Thread(path, Math.round(Math.max(HAIRLINE, thick) * 10) / 10.0, look, title);
    }
}
