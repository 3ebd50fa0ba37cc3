package org.bandtrail.frontdesk.sites;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Mapped;

/**
 * Where the names of sites stand on the map: above their ground, never on it, so that a small site stays visible. On a
 * phone the letters are larger in the drawing's pixels; a name that would then stand on an earlier name or on another
 * small ground is left out there, because the table below has all of them.
 */
public final class MapNames {
    private static final double GAP = 8;
    private static final double POINT = 9;
    /** Height and width of a letter on a phone, in pixels of the drawing; the width is a mean, by measuring. */
    private static final double LETTER_HIGH = 34;

    private static final double LETTER_WIDE = 17;
    private static final double SMALL = 120;

    private MapNames() {}

    /**
     * A name.
     *
     * @param crowded whether it is left out on a phone
     */
    public record Name(String words, String x, String y, boolean crowded) {}

    /** A rectangle in pixels, y downwards. */
    private record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean small() {
            return right - left < SMALL && bottom - top < SMALL;
        }
    }

    /** The names of these sites, in their order. */
    static List<Name> of(List<Mapped.Site> sites, Projection projection) {
        List<Box> grounds = sites.stream().map(site -> ground(site, projection)).toList();
        List<Box> taken = new ArrayList<>();
        List<Name> names = new ArrayList<>();
        for (int index = 0; index < sites.size(); index++) {
            Box ground = grounds.get(index);
            String words = sites.get(index).name();
            double half = Math.min(words.length() * LETTER_WIDE, projection.width()) / 2;
            double x = Math.clamp((ground.left() + ground.right()) / 2, half, projection.width() - half);
            double y = Math.max(ground.top() - GAP, LETTER_HIGH);
            Box letters = new Box(x - half, y - LETTER_HIGH, x + half, y);
            boolean crowded = taken.stream().anyMatch(letters::meets)
                    || grounds.stream().filter(Box::small).anyMatch(letters::meets);
            if (!crowded) {
                taken.add(letters);
            }
            names.add(new Name(words, Projection.number(x), Projection.number(y), crowded));
        }
        return names;
    }

    private static Box ground(Mapped.Site site, Projection projection) {
        List<List<List<Double>>> boundary = site.boundary();
        if (boundary == null || boundary.isEmpty()) {
            double x = x(site.lon() == null ? 0 : site.lon(), projection);
            double y = y(site.lat() == null ? 0 : site.lat(), projection);
            return new Box(x - POINT, y - POINT, x + POINT, y + POINT);
        }
        double left = Double.MAX_VALUE;
        double top = Double.MAX_VALUE;
        double right = -Double.MAX_VALUE;
        double bottom = -Double.MAX_VALUE;
        for (List<Double> corner : boundary.getFirst()) {
            left = Math.min(left, x(corner.getFirst(), projection));
            right = Math.max(right, x(corner.getFirst(), projection));
            top = Math.min(top, y(corner.getLast(), projection));
            bottom = Math.max(bottom, y(corner.getLast(), projection));
        }
        return new Box(left, top, right, bottom);
    }

    private static double x(double lon, Projection projection) {
        return Double.parseDouble(projection.x(lon));
    }

    private static double y(double lat, Projection projection) {
        return Double.parseDouble(projection.y(lat));
    }
}
