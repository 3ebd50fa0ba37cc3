package org.bandtrail.siteinstalls.cuttingstock.search;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntToDoubleFunction;

/** Basis of a linear program with its explicit inverse, row by row. Row r begins with variable -1 - r. */
final class Basis {
    private static final double PIVOT = 1e-7;
    private final double[] wanted;
    private final double[][] inverse;
    private final double[] values;
    private final double[] costs;
    private final double[] prices;
    private final int[] variables;
    private final Set<Integer> inside = new HashSet<>();

    Basis(double[] wanted, double[] costs) {
        int rows = wanted.length;
        this.wanted = wanted.clone();
        this.inverse = new double[rows][rows];
        this.values = wanted.clone();
        this.costs = costs.clone();
        this.prices = costs.clone();
        this.variables = new int[rows];
        for (int row = 0; row < rows; row++) {
            inverse[row][row] = 1;
            variables[row] = -1 - row;
            inside.add(-1 - row);
        }
    }

    int rows() {
        return wanted.length;
    }

    int variable(int row) {
        return variables[row];
    }

    double value(int row) {
        return values[row];
    }

    boolean has(int variable) {
        return inside.contains(variable);
    }

    double[] prices() {
        return prices.clone();
    }

    /** Inverse times a column. */
    double[] times(double[] column) {
        double[] product = new double[rows()];
        for (int at = 0; at < column.length; at++) {
            if (column[at] != 0) {
                for (int row = 0; row < product.length; row++) {
                    product[row] += inverse[row][at] * column[at];
                }
            }
        }
        return product;
    }

    /** Takes a variable in for the one that reaches zero first; false when none does. */
    boolean enter(int variable, double[] direction, double cost) {
        int leaving = -1;
        double ratio = Double.MAX_VALUE;
        for (int row = 0; row < rows(); row++) {
            if (direction[row] > PIVOT) {
                double here = Math.max(0, values[row]) / direction[row];
                if (here < ratio - 1e-12 || here <= ratio + 1e-12 && direction[row] > direction[leaving]) {
                    ratio = Math.min(ratio, here);
                    leaving = row;
                }
            }
        }
        if (leaving < 0) {
            return false;
        }
        double reduced = cost;
        for (int row = 0; row < rows(); row++) {
            reduced -= costs[row] * direction[row];
        }
        pivot(leaving, direction);
        for (int at = 0; at < rows(); at++) {
            prices[at] += reduced * inverse[leaving][at];
        }
        inside.remove(variables[leaving]);
        inside.add(variable);
        variables[leaving] = variable;
        costs[leaving] = cost;
        return true;
    }

    private void pivot(int leaving, double[] direction) {
        double[] pivotRow = inverse[leaving];
        double by = 1 / direction[leaving];
        for (int at = 0; at < pivotRow.length; at++) {
            pivotRow[at] *= by;
        }
        values[leaving] *= by;
        for (int row = 0; row < rows(); row++) {
            double times = direction[row];
            if (row != leaving && times != 0) {
                double[] other = inverse[row];
                for (int at = 0; at < other.length; at++) {
                    other[at] -= times * pivotRow[at];
                }
                values[row] -= times * values[leaving];
            }
        }
    }

    /**
     * Works the inverse out anew from the variables it stands for, so that rounding does not pile up. When {@code over}
     * ends it half way the basis is of no more use.
     */
    void invert(Columns columns, IntToDoubleFunction costOf, BooleanSupplier over) {
        int[] kept = variables.clone();
        for (int row = 0; row < rows(); row++) {
            Arrays.fill(inverse[row], 0);
            inverse[row][row] = 1;
            values[row] = wanted[row];
        }
        boolean[] done = new boolean[rows()];
        for (int variable : kept) {
            if (over.getAsBoolean()) {
                return;
            }
            double[] column = new double[rows()];
            columns.scatter(variable, column);
            double[] direction = times(column);
            int at = -1;
            for (int row = 0; row < rows(); row++) {
                if (!done[row] && (at < 0 || Math.abs(direction[row]) > Math.abs(direction[at]))) {
                    at = row;
                }
            }
            pivot(at, direction);
            done[at] = true;
            variables[at] = variable;
            costs[at] = costOf.applyAsDouble(variable);
        }
        Arrays.fill(prices, 0);
        for (int row = 0; row < rows(); row++) {
            for (int at = 0; at < rows(); at++) {
                prices[at] += costs[row] * inverse[row][at];
            }
        }
    }

    /** Writes the column of a variable into zeros. */
    interface Columns {
        void scatter(int variable, double[] into);
    }
}
