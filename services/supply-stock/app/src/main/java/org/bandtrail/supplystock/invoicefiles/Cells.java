package org.bandtrail.supplystock.invoicefiles;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * Reads the values of one file and gathers every problem with its place, so that a person mends all of them at once. A
 * value that cannot be read gives a harmless stand-in; the document is thrown away when there is any problem.
 */
final class Cells {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}([.,]\\d{1,9})?");
    private static final Pattern TWO_MEANINGS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
    private final List<FileProblem> problems = new ArrayList<>();

    void problem(int row, String column, String message) {
        problems.add(new FileProblem(row, column, message));
    }

    /** Refuses the file if anything in it was wrong. */
    void refuseIfAny() {
        if (!problems.isEmpty()) {
            throw new UnreadableInvoice(problems);
        }
    }

    String needed(int row, String column, @Nullable String text) {
        if (text == null || text.isBlank()) {
            problem(row, column, "Nothing is written here. It is needed.");
            return "?";
        }
        return text.strip();
    }

    /** A decimal number; 1,250 is refused because it is 1250 to one reader and 1.25 to another. */
    BigDecimal number(int row, String column, @Nullable String text) {
        String value = needed(row, column, text);
        if (value.equals("?")) {
            return BigDecimal.ONE;
        }
        if (TWO_MEANINGS.matcher(value).matches()) {
            problem(row, column, "[%s] has two meanings. Write a point before decimals.".formatted(value));
            return BigDecimal.ONE;
        }
        if (!NUMBER.matcher(value).matches()) {
            problem(row, column, "[%s] is not a number. Write it like 12.5.".formatted(value));
            return BigDecimal.ONE;
        }
        return new BigDecimal(value.replace(',', '.'));
    }

    LocalDate day(int row, String column, @Nullable String text) {
        String value = needed(row, column, text);
        try {
            return value.equals("?") ? LocalDate.EPOCH : LocalDate.parse(value);
        } catch (DateTimeException noDay) {
            problem(row, column, "[%s] is not a day. Write it like 2026-05-04.".formatted(value));
            return LocalDate.EPOCH;
        }
    }

    /** A currency with a minor unit (ISO 4217). */
    String currency(int row, String column, @Nullable String text) {
        String value = needed(row, column, text).toUpperCase(Locale.ROOT);
        try {
            return Money.zero(value).currency();
        } catch (IllegalArgumentException none) {
            problem(row, column, String.valueOf(none.getMessage()));
            return "USD";
        }
    }

    /** An amount in whole minor units; a digit too many is refused, not rounded away. */
    Money money(int row, String column, @Nullable String text, String currency) {
        BigDecimal amount = number(row, column, text);
        Money nothing = Money.zero(currency);
        try {
            return Money.of(amount.movePointRight(nothing.minorDigits()).longValueExact(), currency);
        } catch (ArithmeticException | IllegalArgumentException tooFine) {
            problem(
                    row,
                    column,
                    "[%s] is no amount of %s, which has %d decimals."
                            .formatted(amount.toPlainString(), currency, nothing.minorDigits()));
            return nothing;
        }
    }
}
