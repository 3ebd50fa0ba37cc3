package org.bandtrail.supplystock.ledger;

import java.util.Collection;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** Turns rows into the arrays that one statement takes. */
final class Columns {
    private Columns() {}

    static <T> String[] texts(Collection<T> rows, Function<T, @Nullable String> column) {
        return rows.stream().map(column).toArray(String[]::new);
    }

    static <T> Long[] numbers(Collection<T> rows, ToLongFunction<T> column) {
        return rows.stream().map(column::applyAsLong).toArray(Long[]::new);
    }

    static <T> Boolean[] flags(Collection<T> rows, Function<T, Boolean> column) {
        return rows.stream().map(column).toArray(Boolean[]::new);
    }
}
