package org.bandtrail.supplystock.causes;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Labels one sign apart: one sign changed, left out, put in, or two neighbours exchanged, which is a Damerau-Levenshtein
 * distance of exactly 1 (F. J. Damerau, Communications of the ACM 7, 1964, pages 171-176, from memory: most misspellings
 * are one of these four).
 */
public final class LabelSlip {
    private static final String SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ-";

    private LabelSlip() {}

    /** Whether the distance of two labels is exactly 1. */
    public static boolean oneApart(String one, String other) {
        String shorter = one.length() <= other.length() ? one : other;
        String longer = shorter.equals(one) ? other : one;
        int same = 0;
        while (same < shorter.length() && shorter.charAt(same) == longer.charAt(same)) {
            same++;
        }
        if (shorter.length() + 1 == longer.length()) {
            return shorter.substring(same).equals(longer.substring(same + 1));
        }
        if (shorter.length() != longer.length() || same == shorter.length()) {
            return false;
        }
        boolean changed = shorter.substring(same + 1).equals(longer.substring(same + 1));
        return changed || exchanged(shorter, longer, same);
    }

    private static boolean exchanged(String one, String other, int at) {
        return at + 1 < one.length()
                && one.charAt(at) == other.charAt(at + 1)
                && one.charAt(at + 1) == other.charAt(at)
                && one.substring(at + 2).equals(other.substring(at + 2));
    }

    /** Every label one apart from this, spelt with the signs of identities; some hundred for a usual label. */
    public static Set<String> oneApartFrom(String label) {
        Set<String> all = new LinkedHashSet<>();
        for (int at = 0; at <= label.length(); at++) {
            String before = label.substring(0, at);
            for (int sign = 0; sign < SIGNS.length(); sign++) {
                all.add(before + SIGNS.charAt(sign) + label.substring(at));
                if (at < label.length()) {
                    all.add(before + SIGNS.charAt(sign) + label.substring(at + 1));
                }
            }
            if (at < label.length()) {
                all.add(before + label.substring(at + 1));
            }
            if (at + 1 < label.length()) {
                all.add(before + label.charAt(at + 1) + label.charAt(at) + label.substring(at + 2));
            }
        }
        all.remove(label);
        return all;
    }
}
