package org.bandtrail.inspections.columns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** Turns rows into the columns of one {@code unnest}, so that a page of any size is one statement. */
public final class Columns {
    private Columns() {}

    /** A column written by its text: identities, times, enums, JSON. */
    public static <T> @Nullable String[] texts(List<T> rows, Function<T, @Nullable Object> column) {
        List<@Nullable String> values = new ArrayList<>();
        for (T row : rows) {
            Object value = column.apply(row);
            values.add(value == null ? null : value.toString());
        }
        return values.toArray(new String[0]);
    }

    /** A column of whole numbers. */
    public static <T> Long[] numbers(List<T> rows, ToLongFunction<T> column) {
        return rows.stream().map(column::applyAsLong).toArray(Long[]::new);
    }

    /** A column of yes and no. */
    public static <T> Boolean[] flags(List<T> rows, Function<T, Boolean> column) {
        return rows.stream().map(column).toArray(Boolean[]::new);
    }
}
