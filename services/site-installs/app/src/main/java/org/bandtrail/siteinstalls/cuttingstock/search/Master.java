package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The linear program over the columns known so far: every piece cut or left uncut, no class of reels used more often
 * than it has reels, least cost. A revised simplex method with an explicit inverse that goes on from its last basis
 * when columns are added. Its results are proposals: prices are rounded and made into a bound by {@link Bounding},
 * which is true for any prices.
 */
final class Master {
    private static final double SMALL = 1e-9;
    private static final int FRESH_INVERSE = 150;
    private final CutTask task;
    private final ReelClasses classes;
    private final double[] uncutCosts;
    private final List<Column> columns = new ArrayList<>();
    private final Basis basis;
    private final double small;
    private int pivots;

    Master(CutTask task, ReelClasses classes, double[] uncutCosts) {
        this.task = task;
        this.classes = classes;
        this.uncutCosts = uncutCosts.clone();
        this.small = SMALL * task.scale() * task.weights()[0];
        double[] wanted = new double[task.kinds() + classes.size()];
        for (int row = 0; row < wanted.length; row++) {
            double exact = row < task.kinds() ? task.demand()[row] : classes.count(row - task.kinds());
            // a little more on each row, all different, keeps the method from turning in circles
            wanted[row] = exact * (1 + 1e-7 * (1 + row * 37 % 101));
        }
        double[] costs = new double[wanted.length];
        System.arraycopy(uncutCosts, 0, costs, 0, task.kinds());
        this.basis = new Basis(wanted, costs);
    }

    List<Column> columns() {
        return columns;
    }

    void add(Column column) {
        columns.add(column);
    }

    /** Pivots until no known column is worth more than it costs; false when it gave up. */
    boolean solve(int most, BooleanSupplier over) {
        for (int i = 0; i < most && !over.getAsBoolean(); i++) {
            double[] prices = basis.prices();
            int entering = entering(prices);
            if (entering == Integer.MIN_VALUE) {
                return true;
            }
            if (!basis.enter(entering, direction(entering), cost(entering))) {
                return false;
            }
            if (++pivots % FRESH_INVERSE == 0) {
                basis.invert(this::scatter, this::cost, over);
                if (over.getAsBoolean()) {
                    return false;
                }
            }
        }
        return false;
    }

    /** What each piece, and each reel of a class, is worth. */
    double[] prices() {
        return basis.prices();
    }

    /** What the program costs; beyond any when it leaves pieces uncut. */
    double cost() {
        double sum = 0;
        for (int row = 0; row < basis.rows(); row++) {
            int variable = basis.variable(row);
            boolean uncut = variable < 0 && variable >= -task.kinds() && basis.value(row) > 1e-4;
            sum += uncut ? Double.POSITIVE_INFINITY : variable < 0 ? 0 : basis.value(row) * cost(variable);
        }
        return sum;
    }

    /** How much of each kind is left uncut. */
    double[] uncut() {
        double[] uncut = new double[task.kinds()];
        for (int row = 0; row < basis.rows(); row++) {
            if (basis.variable(row) < 0 && basis.variable(row) >= -task.kinds()) {
                uncut[-1 - basis.variable(row)] = basis.value(row);
            }
        }
        return uncut;
    }

    double uncutCost(int kind) {
        return uncutCosts[kind];
    }

    /** Makes leaving a kind uncut dearer; {@link #repriced} is to follow. */
    void uncutCost(int kind, double cost) {
        uncutCosts[kind] = cost;
    }

    /** Works prices out anew after costs have changed. */
    void repriced(BooleanSupplier over) {
        basis.invert(this::scatter, this::cost, over);
    }

    /** How often each known column is used. */
    double[] use() {
        double[] use = new double[columns.size()];
        for (int row = 0; row < basis.rows(); row++) {
            int variable = basis.variable(row);
            if (variable >= 0) {
                use[variable] = basis.value(row);
            }
        }
        return use;
    }

    /**
     * Columns are numbered from 0. Of row r, -1 - r is what is left uncut, or what is left of a class; and
     * -1 - rows - r what is cut too often.
     */
    private int entering(double[] prices) {
        int best = Integer.MIN_VALUE;
        double least = -small;
        for (int j = 0; j < columns.size(); j++) {
            Column column = columns.get(j);
            double reduced = column.cost() - prices[task.kinds() + column.cls()];
            for (int i = 0; i < column.kinds().length; i++) {
                reduced -= prices[column.kinds()[i]] * column.counts()[i];
            }
            if (reduced < least && !basis.has(j)) {
                least = reduced;
                best = j;
            }
        }
        for (int row = 0; row < task.kinds(); row++) {
            if (uncutCosts[row] - prices[row] < least && !basis.has(-1 - row)) {
                least = uncutCosts[row] - prices[row];
                best = -1 - row;
            }
        }
        for (int row = 0; row < basis.rows(); row++) {
            int slack = row < task.kinds() ? -1 - basis.rows() - row : -1 - row;
            double reduced = row < task.kinds() ? prices[row] : -prices[row];
            if (reduced < least && !basis.has(slack)) {
                least = reduced;
                best = slack;
            }
        }
        return best;
    }

    private double cost(int variable) {
        return variable >= 0 ? columns.get(variable).cost() : variable >= -task.kinds() ? uncutCosts[-1 - variable] : 0;
    }

    private double[] direction(int variable) {
        double[] column = new double[basis.rows()];
        scatter(variable, column);
        return basis.times(column);
    }

    private void scatter(int variable, double[] into) {
        if (variable < -basis.rows()) {
            into[-1 - basis.rows() - variable] = -1;
        } else if (variable < 0) {
            into[-1 - variable] = 1;
        } else {
            Column column = columns.get(variable);
            for (int i = 0; i < column.kinds().length; i++) {
                into[column.kinds()[i]] = column.counts()[i];
            }
            into[task.kinds() + column.cls()] = 1;
        }
    }
}
