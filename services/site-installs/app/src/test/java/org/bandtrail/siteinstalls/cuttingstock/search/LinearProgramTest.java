package org.bandtrail.siteinstalls.cuttingstock.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;

/** The own simplex method against a library's, on the columns the search itself came to. */
class LinearProgramTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void the_program_costs_what_a_library_says_and_the_bound_is_not_above(long seed) {
        CutTask task = task(seed);
        Bounding bounding = new Bounding(task, () -> false);
        assertThat(bounding.run(Long.MAX_VALUE, 500)).isTrue();

        double cost = cost(bounding.master());
        double library = byLibrary(task, bounding);

        assertThat(cost).isCloseTo(library, within(library * 1e-4));
        assertThat((double) bounding.bound()).isLessThanOrEqualTo(Math.ceil(library * (1 + 1e-9)));
    }

    /** Reels of 600 and of 500 to 900, pieces of 100 to 350, no rest usable. */
    private static CutTask task(long seed) {
        Chance chance = new Chance(seed);
        int kinds = 12;
        int[] weights = new int[kinds];
        int[] demand = new int[kinds];
        for (int kind = 0; kind < kinds; kind++) {
            weights[kind] = 350 - 20 * kind - chance.below(20);
            demand[kind] = 1 + chance.below(4);
        }
        int reels = 30;
        int[] lengths = new int[reels];
        boolean[] fresh = new boolean[reels];
        int[] ages = new int[reels];
        for (int reel = 0; reel < reels; reel++) {
            fresh[reel] = reel >= 6;
            lengths[reel] = fresh[reel] ? 600 : 500 + chance.below(400);
            ages[reel] = reel;
        }
        return CutTask.of(weights, demand, lengths, fresh, ages, 0, 10_000, 0);
    }

    private static double cost(Master master) {
        double sum = 0;
        double[] use = master.use();
        for (int j = 0; j < use.length; j++) {
            sum += use[j] * master.columns().get(j).cost();
        }
        double[] uncut = master.uncut();
        for (int kind = 0; kind < uncut.length; kind++) {
            sum += uncut[kind] * master.uncutCost(kind);
        }
        return sum;
    }

    /** Rows are kinds, then classes of reels; behind the columns stand uncut pieces, and slacks of both sorts. */
    private static double byLibrary(CutTask task, Bounding bounding) {
        List<Column> columns = bounding.master().columns();
        int kinds = task.kinds();
        int rows = kinds + bounding.classes().size();
        int all = columns.size() + kinds + rows;
        double[] costs = new double[all];
        double[][] left = new double[rows][all];
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            costs[j] = column.cost();
            left[kinds + column.cls()][j] = 1;
            for (int i = 0; i < column.kinds().length; i++) {
                left[column.kinds()[i]][j] = column.counts()[i];
            }
        }
        for (int kind = 0; kind < kinds; kind++) {
            costs[columns.size() + kind] = bounding.master().uncutCost(kind);
            left[kind][columns.size() + kind] = 1;
        }
        LinearSolver.Builder program = LinearSolver.newStandardBuilder(costs);
        for (int row = 0; row < rows; row++) {
            left[row][columns.size() + kinds + row] = row < kinds ? -1 : 1;
            program.equality(
                    row < kinds ? task.demand()[row] : bounding.classes().count(row - kinds), left[row]);
        }
        Optimisation.Result solved = program.build(new Optimisation.Options()).solve();
        assertThat(solved.getState().isOptimal()).isTrue();
        return solved.getValue();
    }
}
