package org.bandtrail.frontdesk.sites;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.MapSettings;
import org.bandtrail.frontdesk.neighbours.field.Mapped;
import org.bandtrail.frontdesk.neighbours.field.Sites;
import org.bandtrail.frontdesk.pages.Desk;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The map of sites and trees. Zoom and moves are links, so it works without script, by keyboard and in gloves. */
@Controller
class MapController {
    private static final double STEP = 0.4;
    private static final double ZOOM = 2;
    private final Sites sites;
    private final MapSettings settings;

    MapController(Sites sites, MapSettings settings) {
        this.sites = sites;
        this.settings = settings;
    }

    /** A move of the map: what it is called and the address it leads to. */
    record Move(String words, String link) {}

    @GetMapping("/map")
    String map(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(required = false) @Nullable Double south,
            @RequestParam(required = false) @Nullable Double west,
            @RequestParam(required = false) @Nullable Double north,
            @RequestParam(required = false) @Nullable Double east) {
        Map<String, Object> asked = new HashMap<>();
        asked.put("on", desk.days().today());
        Mapped.Box part = box(south, west, north, east);
        if (part != null) {
            // The drawing is wider or higher than the box; what stands in its margins is drawn too.
            Mapped.Box box = Projection.fitting(part, 960, 600).box();
            asked.put("south", MapLinks.plain(box.south()));
            asked.put("west", MapLinks.plain(box.west()));
            asked.put("north", MapLinks.plain(box.north()));
            asked.put("east", MapLinks.plain(box.east()));
        }
        Mapped map = sites.map(asked);
        page.addAttribute("map", map);
        page.addAttribute("part", part != null);
        Mapped.Box shown = part == null ? map.box() : part;
        if (shown != null) {
            MapDrawing drawing = MapDrawing.of(map, shown, desk.metric());
            page.addAttribute("drawing", drawing);
            page.addAttribute("moves", moves(drawing.projection()));
            page.addAttribute("tiles", settings.on() ? MapTiles.behind(drawing.projection(), settings) : List.of());
        }
        page.addAttribute("attribution", settings.on() ? settings.attribution() : null);
        return "map";
    }

    /** The part that is asked for, null for everything. */
    private static Mapped.@Nullable Box box(
            @Nullable Double south, @Nullable Double west, @Nullable Double north, @Nullable Double east) {
        return south == null || west == null || north == null || east == null
                ? null
                : new Mapped.Box(south, west, north, east);
    }

    private static List<Move> moves(Projection projection) {
        return List.of(
                new Move("Closer", link(projection.moved(0, 0, ZOOM))),
                new Move("Further away", link(projection.moved(0, 0, 1 / ZOOM))),
                new Move("North", link(projection.moved(0, STEP, 1))),
                new Move("South", link(projection.moved(0, -STEP, 1))),
                new Move("West", link(projection.moved(-STEP, 0, 1))),
                new Move("East", link(projection.moved(STEP, 0, 1))),
                new Move("Everything", "/map"));
    }

    /** The address of the map that shows this box. */
    private static String link(Mapped.Box box) {
        // The margin is taken off again, or the map would creep away with each step.
        double high = (box.north() - box.south()) * Projection.MARGIN_SHARE;
        double wide = (box.east() - box.west()) * Projection.MARGIN_SHARE;
        return MapLinks.to(
                new Mapped.Box(box.south() + high, box.west() + wide, box.north() - high, box.east() - wide));
    }
}
