package org.bandtrail.frontdesk.sites;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Mapped;
import org.junit.jupiter.api.Test;

class MapNamesTest {
    private static final Projection PROJECTION =
            Projection.fitting(new Mapped.Box(40.44, -75.34, 40.45, -75.32), 960, 600);

    @Test
    void a_name_stands_above_its_ground_and_not_on_it() {
        Mapped.Site pond = at("Pond", 40.445, -75.33);

        MapNames.Name name = MapNames.of(List.of(pond), PROJECTION).getFirst();

        // The point's sign reaches 9 pixels up and the gap is 8 more: by hand.
        assertThat(Double.parseDouble(name.y())).isEqualTo(Double.parseDouble(PROJECTION.y(40.445)) - 17);
        assertThat(name.x()).isEqualTo(PROJECTION.x(-75.33));
        assertThat(name.crowded()).isFalse();
    }

    @Test
    void a_name_that_would_stand_on_another_or_on_a_small_ground_is_left_out_on_a_phone() {
        Mapped.Site pond = at("Pond", 40.445, -75.33);
        Mapped.Site near = at("Weir", 40.4451, -75.3299);
        Mapped.Site far = at("Hill", 40.448, -75.324);

        assertThat(MapNames.of(List.of(pond, near, far), PROJECTION))
                .extracting(MapNames.Name::words, MapNames.Name::crowded)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("Weir", true),
                        org.assertj.core.groups.Tuple.tuple("Hill", false));
    }

    @Test
    void a_long_name_at_the_edge_stays_within_the_drawing() {
        MapNames.Name name = MapNames.of(List.of(at("Mill pond woods", 40.4499, -75.3399)), PROJECTION)
                .getFirst();

        // Fifteen letters of 17 pixels are 255 pixels: by hand.
        assertThat(Double.parseDouble(name.x())).isGreaterThanOrEqualTo(127.5);
        assertThat(Double.parseDouble(name.y())).isGreaterThanOrEqualTo(34);
    }

    private static Mapped.Site at(String name, double lat, double lon) {
        return new Mapped.Site("S-" + name, name, lat, lon, null, 1, 0);
    }
}
