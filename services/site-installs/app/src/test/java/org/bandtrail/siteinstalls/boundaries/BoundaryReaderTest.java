package org.bandtrail.siteinstalls.boundaries;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class BoundaryReaderTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String AGAINST_THE_CLOCK =
            "[[-75.34,40.44],[-75.339,40.44],[-75.339,40.441],[-75.34,40.441],[-75.34,40.44]]";
    private static final String WITH_THE_CLOCK =
            "[[-75.34,40.44],[-75.34,40.441],[-75.339,40.441],[-75.339,40.44],[-75.34,40.44]]";
    private static final String HOLE =
            "[[-75.3396,40.4404],[-75.3394,40.4404],[-75.3394,40.4406],[-75.3396,40.4406],[-75.3396,40.4404]]";

    private static BoundaryReader.Read polygon(String rings) {
        return BoundaryReader.read(JSON.readTree("{\"type\":\"Polygon\",\"coordinates\":[" + rings + "]}"));
    }

    @Test
    void a_square_has_the_area_and_the_perimeter_of_geographiclib() {
        // Check values F6, own runs of GeographicLib PolygonArea: 391.7714 m and 9,421.1872 square metres
        BoundaryReader.Read read = polygon(AGAINST_THE_CLOCK);
        assertThat(read.boundary().areaDm2()).isEqualTo(942_119);
        assertThat(read.boundary().perimeterMm()).isEqualTo(391_771);
        assertThat(read.notes()).isEmpty();
    }

    @Test
    void a_ring_that_runs_with_the_clock_is_turned_and_that_is_said() {
        BoundaryReader.Read read = polygon(WITH_THE_CLOCK);
        assertThat(read.boundary()).isEqualTo(polygon(AGAINST_THE_CLOCK).boundary());
        assertThat(read.notes()).hasSize(1).first().asString().contains("turned");
    }

    @Test
    void a_hole_runs_with_the_clock_and_its_ground_is_taken_off() {
        BoundaryReader.Read read = polygon(AGAINST_THE_CLOCK + "," + HOLE);
        assertThat(read.notes()).hasSize(1).first().asString().contains("Hole 1");
        long hole = polygon(HOLE).boundary().areaDm2();
        assertThat(read.boundary().areaDm2()).isBetween(942_119 - hole - 1, 942_119 - hole + 1);
        assertThat(hole).isBetween(37_600L, 37_800L); // a twenty-fifth of the square
    }

    @Test
    void a_feature_is_read_and_several_parts_are_not_one_site() {
        assertThat(BoundaryReader.read(JSON.readTree(
                                "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":["
                                        + AGAINST_THE_CLOCK + "]}}"))
                        .boundary()
                        .rings())
                .hasSize(1);
        assertThatThrownBy(() -> BoundaryReader.read(JSON.readTree("{\"type\":\"MultiPolygon\",\"coordinates\":[]}")))
                .hasMessageContaining("MultiPolygon")
                .hasMessageContaining("several sites");
    }

    @Test
    void what_is_open_crossing_or_beyond_the_earth_is_named() {
        assertThatThrownBy(() -> polygon("[[-75.34,40.44],[-75.339,40.44],[-75.339,40.441],[-75.34,40.441]]"))
                .hasMessageContaining("not closed")
                .hasMessageContaining("Repeat its first position");
        assertThatThrownBy(() -> polygon("[[0,0],[0.01,0.01],[0.01,0],[0,0.01],[0,0]]"))
                .hasMessageContaining("crosses another");
        assertThatThrownBy(() -> polygon("[[0,91],[0.01,91],[0.01,91.1],[0,91]]"))
                .hasMessageContaining("91");
        assertThatThrownBy(() -> polygon("[[0,0],[2,0],[2,2],[0,0]]")).hasMessageContaining("one degree");
        assertThatThrownBy(() -> polygon("[[0,0],[0,0.1],[0,0]]")).hasMessageContaining("3 positions");
        assertThatThrownBy(() -> polygon("[[0],[0,0.1],[0.1,0.1],[0]]")).hasMessageContaining("Position 1 of ring 1");
    }

    @Test
    void an_area_that_no_site_has_is_questioned_and_kept() {
        assertThat(polygon("[[0,0],[0.5,0],[0.5,0.5],[0,0]]").notes())
                .first()
                .asString()
                .contains("10 square kilometres");
        assertThat(polygon("[[0,0],[0.00001,0],[0.00001,0.00001],[0,0]]").notes())
                .first()
                .asString()
                .contains("10 square metres");
    }
}
