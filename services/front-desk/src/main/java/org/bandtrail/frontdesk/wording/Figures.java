package org.bandtrail.frontdesk.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LengthText;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * Quantities in the words of one unit system. A missing quantity is a dash, never a zero.
 *
 * @param units the system the reader chose
 */
public record Figures(Units units) {
    private static final String NOTHING = "–";
    private static final BigDecimal MM_PER_FOOT = new BigDecimal("304.8");
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
    private static final BigDecimal MM_PER_METRE = new BigDecimal("1000");

    /** A long length: metres to the centimetre, or feet to a tenth. */
    public String run(@Nullable Long mm) {
        if (mm == null) {
            return NOTHING;
        }
        boolean metric = units == Units.SI;
        BigDecimal value = BigDecimal.valueOf(mm)
                .divide(metric ? MM_PER_METRE : MM_PER_FOOT, metric ? 2 : 1, RoundingMode.HALF_UP);
        return plain(metric ? "#,##0.00" : "#,##0.0", value) + (metric ? " m" : " ft");
    }

    /** A short length: whole millimetres, or feet and inches to the eighth. */
    public String piece(@Nullable Long mm) {
        if (mm == null) {
            return NOTHING;
        }
        return units == Units.SI
                ? plain("#,##0", BigDecimal.valueOf(mm)) + " mm"
                : LengthText.feetAndInches(Length.ofMm(mm));
    }

    /** A short length as it is typed, in the unit {@link Units#small()}: reads back to the same millimetre. */
    public String typed(@Nullable Long mm) {
        if (mm == null) {
            return "";
        }
        return units == Units.SI
                ? Long.toString(mm)
                : BigDecimal.valueOf(mm)
                        .divide(MM_PER_INCH, 2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    /** The stored value itself, for titles. */
    public String stored(@Nullable Long mm) {
        return mm == null ? "not recorded" : plain("#,##0", BigDecimal.valueOf(mm)) + " mm stored";
    }

    /** Pieces with thousands marked. */
    public String count(@Nullable Long pieces) {
        return pieces == null ? NOTHING : plain("#,##0", BigDecimal.valueOf(pieces));
    }

    /** Pieces with their word. */
    public String pieces(@Nullable Long pieces) {
        return pieces == null ? NOTHING : count(pieces) + (pieces == 1 ? " piece" : " pieces");
    }

    /** An amount with its currency, for example {@code USD 1,250.00}. */
    public String money(@Nullable Money amount) {
        if (amount == null) {
            return NOTHING;
        }
        int digits = Math.max(0, amount.minorDigits());
        String pattern = digits == 0 ? "#,##0" : "#,##0." + "0".repeat(digits);
        return amount.currency() + " " + plain(pattern, BigDecimal.valueOf(amount.minor(), digits));
    }

    /** An amount as it is typed, in major units without its currency: reads back to the same minor units. */
    public String typedMoney(@Nullable Money amount) {
        return amount == null
                ? ""
                : BigDecimal.valueOf(amount.minor(), Math.max(0, amount.minorDigits()))
                        .toPlainString();
    }

    /** An amount given as minor units. */
    public String money(@Nullable Long minor, String currency) {
        return minor == null ? NOTHING : money(Money.of(minor, currency));
    }

    /**
     * A limit in smallest units, as it reads in each of these currencies, for example {@code USD 5.00 or JPY 500}.
     */
    public String money(long minor, List<String> currencies) {
        return currencies.stream().map(currency -> money(minor, currency)).collect(Collectors.joining(" or "));
    }

    /**
     * A quantity whose unit came with it: mm, pieces, minor units of a currency ({@code USD ...}), or anything else.
     */
    public String quantity(long quantity, String unit) {
        if (unit.equals("mm")) {
            return run(quantity);
        }
        if (unit.matches("[A-Z]{3}( .*)?")) {
            return money(Money.of(quantity, unit.substring(0, 3)));
        }
        return unit.equals("pieces") ? pieces(quantity) : count(quantity) + " " + unit;
    }

    /** A reckoned quantity, rounded to the whole mm or up to the tenth of a piece. */
    public String rounded(double quantity, String unit) {
        return unit.equals("mm") ? run(Math.round(quantity)) : number(quantity) + " pieces";
    }

    /** A number with at most two decimals, for means and standard deviations. */
    public String number(@Nullable Double value) {
        return value == null ? NOTHING : plain("#,##0.##", BigDecimal.valueOf(value));
    }

    private static String plain(String pattern, BigDecimal value) {
        DecimalFormat format = new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(value);
    }
}
