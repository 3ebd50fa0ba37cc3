package org.bandtrail.supplystock.labels;

/**
 * The last digit of a GS1 number (GTIN-8, -12, -13, -14): digits before it are weighted 3 and 1 in turn, beginning with 3
 * at the right, and the check digit makes their sum a multiple of 10. Source: GS1 General Specifications, section 7.9.1,
 * from memory. Valid for 7 to 17 digits before the check digit.
 */
public final class CheckDigit {
    private static final int FEWEST = 7;
    private static final int MOST = 17;

    private CheckDigit() {}

    /**
     * The check digit of the digits before it.
     *
     * @throws IllegalArgumentException naming the text if it is not 7 to 17 digits
     */
    public static int of(String digits) {
        if (digits.length() < FEWEST || digits.length() > MOST || !digits.matches("[0-9]+")) {
            throw new IllegalArgumentException(
                    "[%s] is not the beginning of a GS1 number. Write 7 to 17 digits.".formatted(digits));
        }
        int sum = 0;
        for (int place = digits.length() - 1, weight = 3; place >= 0; place--, weight = 4 - weight) {
            sum += weight * (digits.charAt(place) - '0');
        }
        return (10 - sum % 10) % 10;
    }

    /** Tells whether a whole number ends in its check digit. */
    public static boolean fits(String number) {
        return number.matches("[0-9]{8,18}")
                && of(number.substring(0, number.length() - 1)) == number.charAt(number.length() - 1) - '0';
    }
}
