package org.bandtrail.supplystock.suppliers;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.kernel.LengthUnit;
import org.bandtrail.kernel.MaterialKind;

/**
 * An order unit with what is in it. Contents are exact: one yard is 914,400 micrometres, a box of 12 reels of 36 yards
 * 395,020,800. Whole millimetres are taken once, from the sum of a line, never from one unit, so nothing is lost by
 * counting in small units. Source: NIST Special Publication 811 (2008), appendix B.8, by way of {@link LengthUnit}.
 *
 * @param unit in which the supplier sells
 * @param content of one unit: micrometres of tape and mesh, pieces of fasteners; above zero
 */
public record Packing(OrderUnit unit, long content) {
    private static final long MICROMETRES_PER_MM = 1_000;
    private static final Pattern TIMES = Pattern.compile("([1-9][0-9]{0,5})\\s*[x×]\\s*(.+)");
    private static final Pattern LENGTH = Pattern.compile("([0-9]{1,9}(?:[.,][0-9]{1,6})?)\\s*([a-zA-Z\"'″′”’]+)");
    private static final Pattern PIECES = Pattern.compile("([0-9]{1,9})(?:\\s*(?:pieces?|pcs))?");

    /**
     * Refuses a unit with nothing in it.
     *
     * @throws IllegalArgumentException naming the content
     */
    public Packing {
        if (content <= 0) {
            throw new IllegalArgumentException("A %s holds [%d]. Say what is in one.".formatted(unit.word(), content));
        }
    }

    /**
     * The packing of a kind of material. Metres, yards, feet and pieces say themselves what they hold; of a reel, pack
     * or box the content must be given.
     *
     * @param content for example {@code 55 yd}, {@code 12 x 36 yd}, {@code 100} pieces; empty where the unit says it
     * @throws IllegalArgumentException naming unit and content if they do not fit the kind
     */
    public static Packing of(MaterialKind kind, OrderUnit unit, String content) {
        LengthUnit length = unit.length();
        if (length != null) {
            if (!kind.onReels()) {
                throw new IllegalArgumentException(
                        "Fasteners are counted, they cannot be bought by the %s. Use pieces, packs or boxes."
                                .formatted(unit.word()));
            }
            return new Packing(unit, length.micrometres());
        }
        if (unit == OrderUnit.PIECE) {
            if (kind.onReels()) {
                throw new IllegalArgumentException(
                        "Tape and mesh are measured, they cannot be bought by the piece. Use reels or a length.");
            }
            return new Packing(unit, 1);
        }
        return new Packing(unit, read(kind, unit, content.strip()));
    }

    private static long read(MaterialKind kind, OrderUnit unit, String text) {
        Matcher times = TIMES.matcher(text);
        long factor = 1;
        String one = text;
        if (times.matches()) {
            factor = Long.parseLong(times.group(1));
            one = times.group(2).strip();
        }
        Matcher written = (kind.onReels() ? LENGTH : PIECES).matcher(one);
        LengthUnit length = written.matches() && kind.onReels() ? LengthUnit.spelt(written.group(2)) : null;
        if (!written.matches() || kind.onReels() && length == null) {
            throw new IllegalArgumentException("What a %s holds cannot be read from [%s]. Write it like %s."
                    .formatted(unit.word(), text, kind.onReels() ? "55 yd or 12 x 50 m" : "100 or 10 x 100"));
        }
        if (length == null) {
            return Math.multiplyExact(factor, Long.parseLong(written.group(1)));
        }
        try {
            return new BigDecimal(written.group(1).replace(',', '.'))
                    .multiply(BigDecimal.valueOf(length.micrometres()))
                    .multiply(BigDecimal.valueOf(factor))
                    .longValueExact();
        } catch (ArithmeticException notWhole) {
            throw new IllegalArgumentException(
                    "[%s] is no whole number of micrometres. Write fewer decimals.".formatted(text), notWhole);
        }
    }

    /**
     * So many units in millimetres or pieces: exact, but for the last millimetre of the whole line, which counts only
     * if it is complete.
     *
     * @throws IllegalArgumentException naming the units if no programme has so many
     */
    public long base(MaterialKind kind, long units) {
        BigInteger exact = BigInteger.valueOf(content).multiply(BigInteger.valueOf(units));
        BigInteger base = kind.onReels() ? exact.divide(BigInteger.valueOf(MICROMETRES_PER_MM)) : exact;
        if (base.bitLength() >= Long.SIZE) {
            throw new IllegalArgumentException(
                    "[%d] %ss are beyond anything a depot holds. Check the number.".formatted(units, unit.word()));
        }
        return base.longValueExact();
    }

    /**
     * What a quantity costs at a price for one unit, rounded half up to the minor unit once.
     *
     * @param base millimetres or pieces
     * @param unitPrice minor units for one order unit
     */
    public long priceOf(MaterialKind kind, long base, long unitPrice) {
        BigDecimal smallest = BigDecimal.valueOf(base).multiply(BigDecimal.valueOf(kind.onReels() ? 1_000 : 1));
        return smallest.multiply(BigDecimal.valueOf(unitPrice))
                .divide(BigDecimal.valueOf(content), 0, java.math.RoundingMode.HALF_UP)
                .longValueExact();
    }
}
