package org.bandtrail.frontdesk.trail;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.wording.Figures;

/**
 * The trail as shapes. A ribbon leaves the supplier as wide as all that was received; at each place the part that
 * rests there peels off, the rest runs on. All widths of one drawing share one scale; an amount too small to see gets
 * a hairline. The wide drawing runs to the right and peels downwards; the tall one, for a phone, is its mirror.
 *
 * @param width of the view box, in pixels at full size
 * @param height of the view box
 */
public record TrailDrawing(double width, double height, boolean tall, List<Stretch> stretches, List<Label> labels) {
    private static final double FULL = 56;
    private static final double HAIRLINE = 1.5;
    private static final double BEND = 14;
    private static final double DROP = 22;
    private static final double TOP = 6;
    private static final double START = 46;
    private static final double GAP = 1.5;
    private static final double TEETH = 5;

    /** A shape to click: the path of a ribbon or of what peels off. */
    public record Stretch(String path, String look, String link, String title) {}

    /** An amount and the name of its place, beside the end of what peels off. */
    public record Label(double x, double y, String amount, String name, String link, boolean lost) {}

    /** The keys of the stops to draw: all regular ones, and the seldom ones that hold something in any of the flows. */
    public static Set<String> shown(List<Flow> flows) {
        return flows.stream()
                .flatMap(flow -> flow.stops().stream())
                .filter(stop -> !stop.seldom() || stop.amount() != 0)
                .map(Flow.Stop::key)
                .collect(Collectors.toSet());
    }

    /** Draws a flow. */
    public static TrailDrawing of(Flow flow, Set<String> shown, boolean tall, Figures figures) {
        List<Flow.Stop> stops =
                flow.stops().stream().filter(stop -> shown.contains(stop.key())).toList();
        double length = tall ? 64 + stops.size() * 52 : Math.max(1040, 250 + (stops.size() - 1) * 104);
        double first = tall ? 116 : 180;
        double pitch = (length - first - (tall ? 14 : 70)) / Math.max(1, stops.size() - 1);
        double scale = FULL
                / Math.max(
                        1,
                        stops.stream()
                                .mapToLong(stop -> Math.max(0, stop.amount()))
                                .sum());
        Pen pen = new Pen(tall, new ArrayList<>(), new ArrayList<>());
        double left = stops.stream().mapToDouble(stop -> thickness(stop, scale)).sum();
        double from = START;
        String since = "supplier";
        for (int index = 0; index < stops.size(); index++) {
            Flow.Stop stop = stops.get(index);
            double thick = thickness(stop, scale);
            double at = first + index * pitch;
            double turn = at - BEND - thick / 2;
            pen.ribbon(flow, from, turn, left, stop.key(), "on the way from " + since + " to " + stop.key());
            pen.peel(flow, stop, turn, left, thick, figures);
            pen.label(flow, stop, at, figures);
            left -= thick;
            from = turn;
            since = stop.key();
        }
        double across = TOP + FULL + BEND + DROP;
        return new TrailDrawing(
                tall ? 350 : length,
                tall ? length : across + 48,
                tall,
                List.copyOf(pen.stretches),
                List.copyOf(pen.labels));
    }

    private static double thickness(Flow.Stop stop, double scale) {
        return stop.amount() <= 0 ? 0 : Math.max(HAIRLINE, stop.amount() * scale);
    }

    /** Writes shapes in one of the two directions. */
    private record Pen(boolean tall, List<Stretch> stretches, List<Label> labels) {

        void ribbon(Flow flow, double from, double to, double thick, String target, String title) {
            if (thick <= 0 || to <= from) {
                return;
            }
            double begin = from + (from == START ? 0 : GAP);
            String path = "M" + at(begin, TOP) + "L" + at(to, TOP) + "L" + at(to, TOP + thick) + "L"
                    + at(begin, TOP + thick) + "Z";
            stretches.add(new Stretch(path, flow.material(), "/where?at=" + target, flow.name() + " " + title));
        }

        void peel(Flow flow, Flow.Stop stop, double turn, double left, double thick, Figures figures) {
            if (thick <= 0) {
                return;
            }
            double low = TOP + left;
            double high = low - thick;
            double wide = BEND + thick;
            double end = TOP + FULL + BEND + DROP - (stop.lost() ? TEETH : 0);
            String path = "M" + at(turn + GAP, high) + "L" + at(turn, high) + arc(wide, true)
                    + at(turn + wide, low + BEND) + "L" + at(turn + wide, end)
                    + (stop.lost() ? "L" + at(turn + BEND + thick / 2, end + TEETH) : "")
                    + "L" + at(turn + BEND, end) + "L" + at(turn + BEND, low + BEND) + arc(BEND, false)
                    + at(turn, low) + "Z";
            String look = flow.material() + (stop.lost() ? " lost" : " rest");
            stretches.add(new Stretch(
                    path,
                    look,
                    stop.link(),
                    flow.name() + " " + stop.name() + ": " + flow.words(stop.amount(), figures) + ", "
                            + flow.stored(stop.amount(), figures)));
        }

        void label(Flow flow, Flow.Stop stop, double at, Figures figures) {
            double end = TOP + FULL + BEND + DROP;
            if (stop.seldom() && stop.amount() == 0) {
                return;
            }
            String amount = stop.amount() == 0 ? "none" : flow.words(stop.amount(), figures);
            labels.add(new Label(
                    tall ? end + 10 : at, tall ? at - 1 : end + 19, amount, stop.name(), stop.link(), stop.lost()));
        }

        private String at(double along, double across) {
            return tall ? number(across) + " " + number(along) : number(along) + " " + number(across);
        }

        private String arc(double radius, boolean outer) {
            int sweep = outer == tall ? 0 : 1;
            return "A" + number(radius) + " " + number(radius) + " 0 0 " + sweep + " ";
        }

        private static String number(double value) {
            return String.format(Locale.ROOT, "%.1f", value);
        }
    }
}
