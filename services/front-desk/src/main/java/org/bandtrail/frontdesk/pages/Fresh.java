package org.bandtrail.frontdesk.pages;

/**
 * Identities for things a form creates, short enough to read out: six characters of the second, four of chance, in an
 * alphabet without I, L, O and U (Crockford's base 32), taken from a UUID version 7.
 */
final class Fresh {
    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int BITS = 5;

    private Fresh() {}

    static String id(String prefix, String uuid7) {
        String hex = uuid7.replace("-", "");
        long second = Long.parseLong(hex.substring(0, 12), 16) / 1000;
        long chance = Long.parseLong(hex.substring(27), 16);
        return prefix + "-" + spelt(second, 6) + "-" + spelt(chance, 4);
    }

    private static String spelt(long number, int length) {
        StringBuilder text = new StringBuilder();
        for (int place = length - 1; place >= 0; place--) {
            text.append(ALPHABET.charAt((int) (number >> place * BITS & ALPHABET.length() - 1)));
        }
        return text.toString();
    }
}
