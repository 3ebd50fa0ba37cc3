package org.bandtrail.siteinstalls.duplicates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.bandtrail.siteinstalls.sites.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TreeDistanceTest {
    // Check values F6: the first two rows are in the tests of the reference library; the third is the worked example
    // known from Vincenty's formulae, -37 57' 3.72030" 144 25' 29.52440" to -37 39' 10.15610" 143 55' 35.38390"; the
    // others were computed with GeographicLib and are given to a tenth of a millimetre.
    @ParameterizedTest
    @CsvSource({
        "35.60777, -139.44815, -11.17491, -69.95921, 8935244.5604818305, 1e-8",
        "-19.79938, -174.47484, -11.99349, -154.35109, 2319004.8601169389, 1e-8",
        "-37.95103341666667, 144.42486788888889, -37.65282113888889, 143.92649552777778, 54972.2711, 5e-5",
        "40.6, -73.8, 51.6, -0.5, 5551759.4003, 5e-5",
        "0, 0, 1, 0, 110574.3886, 5e-5",
        "0, 0, 0, 1, 111319.4908, 5e-5",
        "40, 0, 40, 1, 85393.4091, 5e-5",
        "40, 0, 41, 0, 111044.2609, 5e-5",
        "40, 0, 40, 0.00001, 0.8539, 5e-5",
        "40.44, -75.34, 40.44009, -75.34, 9.9939, 5e-5",
        "40.44, -75.34, 40.44, -75.33988, 10.1812, 5e-5",
    })
    void lines_are_as_long_as_known(
            double latitude, double longitude, double otherLatitude, double otherLongitude, double metres, double by) {
        assertThat(TreeDistance.metres(latitude, longitude, otherLatitude, otherLongitude))
                .isCloseTo(metres, within(by));
        assertThat(TreeDistance.metres(otherLatitude, otherLongitude, latitude, longitude))
                .isCloseTo(metres, within(by));
    }

    @Test
    void trees_are_measured_in_whole_millimetres() {
        Point gate = new Point(404_400_000, -753_400_000);
        assertThat(TreeDistance.mm(gate, new Point(404_400_900, -753_400_000))).isEqualTo(9_994);
        assertThat(TreeDistance.mm(gate, gate)).isZero();
    }

    @Test
    void the_date_line_is_no_wall() {
        // 2e-5 degrees of longitude at the equator: 111319.4908 m x 2e-5 = 2.226 m
        assertThat(TreeDistance.mm(new Point(0, 1_799_999_900), new Point(0, -1_799_999_900)))
                .isEqualTo(2_226);
    }

    @Test
    void a_latitude_off_the_earth_is_refused_by_name() {
        assertThatThrownBy(() -> TreeDistance.metres(90.1, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("90.1");
        assertThatThrownBy(() -> TreeDistance.metres(0, 0, Double.NaN, 0)).hasMessageContaining("NaN");
    }
}
