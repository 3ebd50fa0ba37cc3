package org.bandtrail.frontdesk.sites;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.bandtrail.frontdesk.MapSettings;
import org.bandtrail.frontdesk.neighbours.field.Mapped;
import org.junit.jupiter.api.Test;

class MapDrawingTest {
    private static final Mapped.Box SQUARE = new Mapped.Box(40.44, -75.34, 40.441, -75.339);

    @Test
    void the_middle_of_the_box_is_the_middle_of_the_drawing_and_north_is_up() {
        Projection projection = Projection.fitting(SQUARE, 960, 600);
        assertThat(projection.x(-75.3395)).isEqualTo("480.0");
        assertThat(projection.y(40.4405)).isEqualTo("300.0");
        assertThat(Double.parseDouble(projection.y(40.441))).isLessThan(300);
        assertThat(Double.parseDouble(projection.x(-75.339))).isGreaterThan(480);
    }

    @Test
    void a_distance_is_as_long_across_as_upwards() {
        // Check values F6: (40.44,-75.34) to (40.44009,-75.34) 9.9939 m, to (40.44,-75.33988) 10.1812 m
        Projection projection = Projection.fitting(SQUARE, 9600, 6000);
        double up = Double.parseDouble(projection.y(40.44)) - Double.parseDouble(projection.y(40.44009));
        double across = Double.parseDouble(projection.x(-75.33988)) - Double.parseDouble(projection.x(-75.34));
        assertThat(across / up).isCloseTo(10.1812 / 9.9939, within(0.01));
        assertThat(up * projection.metresPerPixel()).isCloseTo(9.9939, within(0.05));
    }

    @Test
    void the_bar_is_a_round_number_in_the_readers_unit() {
        Mapped map = new Mapped(SQUARE, List.of(), List.of(), List.of(), 0, 0);
        assertThat(MapDrawing.of(map, SQUARE, true).scale().words()).isEqualTo("20 m");
        assertThat(MapDrawing.of(map, SQUARE, false).scale().words()).isEqualTo("100 ft");
    }

    @Test
    void tiles_lie_where_their_corners_are() {
        MapSettings settings = new MapSettings("https://tiles.example/{z}/{x}/{y}.png", null);
        Projection projection = Projection.fitting(SQUARE, 960, 600);
        List<MapTiles.Tile> tiles = MapTiles.behind(projection, settings);
        assertThat(tiles)
                .hasSizeBetween(4, 40)
                .allSatisfy(tile -> assertThat(tile.address()).startsWith("https://tiles.example/19/"));
        // Column and row of zoom 1: the north-west quarter of the world is tile 0/0
        assertThat(MapTiles.column(-75.34, 1)).isZero();
        assertThat(MapTiles.row(40.44, 1)).isZero();
        assertThat(MapTiles.row(-40.44, 1)).isOne();
        assertThat(settings.pictureSource()).isEqualTo(" https://tiles.example");
    }

    @Test
    void without_an_address_nothing_is_loaded_from_elsewhere_and_a_wrong_one_is_refused() {
        assertThat(new MapSettings(null, null).on()).isFalse();
        assertThat(new MapSettings(" ", null).pictureSource()).isEmpty();
        assertThatThrownBy(() -> new MapSettings("https://tiles.example/", null))
                .hasMessageContaining("{z}");
        assertThatThrownBy(() -> new MapSettings("/{z}/{x}/{y}", null)).hasMessageContaining("https://");
    }

    @Test
    void areas_are_in_hectares_or_acres() {
        assertThat(Areas.words(942_119L, true)).isEqualTo("0.94 ha");
        assertThat(Areas.words(942_119L, false)).isEqualTo("2.33 acres");
        assertThat(Areas.words(null, true)).isEqualTo("–");
    }
}
