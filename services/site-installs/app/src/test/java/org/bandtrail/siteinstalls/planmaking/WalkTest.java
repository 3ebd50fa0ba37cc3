package org.bandtrail.siteinstalls.planmaking;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WalkTest {
    /** Points of a plane. */
    private record Plane(List<double[]> points) implements Walk.Distance {
        @Override
        public double between(int one, int other) {
            double[] a = points.get(one);
            double[] b = points.get(other);
            // The files ask for distances rounded to whole units.
            return Math.rint(Math.hypot(a[0] - b[0], a[1] - b[1]));
        }
    }

    private static Plane tour(String name) throws IOException {
        try (InputStream file = Objects.requireNonNull(WalkTest.class.getResourceAsStream("/tours/" + name))) {
            List<double[]> points = new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> line.matches("[0-9]+ +[0-9.]+ +[0-9.]+"))
                    .map(line -> line.split(" +"))
                    .map(parts -> new double[] {Double.parseDouble(parts[1]), Double.parseDouble(parts[2])})
                    .toList();
            return new Plane(points);
        }
    }

    /** Shortest lengths of these published tours, from memory: 7542 and 426. */
    @ParameterizedTest
    @CsvSource({"berlin52.tsp, 52, 7542", "eil51.tsp, 51, 426"})
    void a_round_is_never_shorter_than_the_shortest_and_at_most_a_twelfth_longer(String file, int count, double best)
            throws IOException {
        Plane plane = tour(file);
        assertThat(plane.points()).hasSize(count);
        int[] nearest = Walk.nearestNeighbour(count, plane);
        int[] round = Walk.round(count, plane);

        double length = Walk.length(round, plane, true);
        assertThat(length).isGreaterThanOrEqualTo(best).isLessThanOrEqualTo(best * 13 / 12);
        assertThat(length).isLessThanOrEqualTo(Walk.length(nearest, plane, true));
        assertThat(IntStream.of(round).sorted().toArray())
                .isEqualTo(IntStream.range(0, count).toArray());
    }

    @Test
    void a_walk_visits_every_tree_once_from_the_first_and_is_never_longer_than_always_to_the_nearest() {
        long steps = Histories.check(
                200, 20_261_125, 40, chance -> new int[] {chance.nextInt(1000), chance.nextInt(1000)}, stops -> {
                    List<double[]> points = new ArrayList<>();
                    stops.forEach(stop -> points.add(new double[] {stop[0], stop[1]}));
                    Plane plane = new Plane(points);
                    int[] walk = Walk.oneWay(points.size(), plane);
                    assertThat(IntStream.of(walk).sorted().toArray())
                            .isEqualTo(IntStream.range(0, points.size()).toArray());
                    assertThat(points.isEmpty() ? 0 : walk[0]).isZero();
                    assertThat(Walk.length(walk, plane, false))
                            .isLessThanOrEqualTo(
                                    Walk.length(Walk.nearestNeighbour(points.size(), plane), plane, false));
                    assertThat(Walk.oneWay(points.size(), plane))
                            .as("the same again")
                            .isEqualTo(walk);
                });
        assertThat(steps).isGreaterThan(200);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void hardly_any_trees_are_a_walk_too(int count) {
        assertThat(Walk.oneWay(count, (one, other) -> 1))
                .isEqualTo(IntStream.range(0, count).toArray());
    }

    @Test
    void trees_along_a_hedge_are_walked_along_the_hedge() {
        double[] hedge = {0, 30, 10, 40, 20};
        assertThat(Walk.oneWay(5, (one, other) -> Math.abs(hedge[one] - hedge[other])))
                .containsExactly(0, 2, 4, 1, 3);
    }
}
