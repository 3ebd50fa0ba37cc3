package org.bandtrail.supplystock.countrules;

/**
 * The figures of the rules.
 *
 * @param toleranceMm a reel may be off by so many millimetres
 * @param tolerancePieces a batch may be off by so many pieces
 * @param tolerancePermille or by this share of the book figure, if that is more
 * @param secondPersonFromMinor from this value of all differences on, somebody who did not count approves; minor units
 * @param basis what an item's value class is reckoned from
 * @param shareA items that together make up this share of the value are class A, per mille
 * @param shareB items up to this share, A's included, are class B, per mille; the rest is class C
 * @param daysA items of class A are counted again after so many days
 * @param daysB likewise class B
 * @param daysC likewise class C
 */
public record CountRules(
        long toleranceMm,
        long tolerancePieces,
        int tolerancePermille,
        long secondPersonFromMinor,
        ValueBasis basis,
        int shareA,
        int shareB,
        int daysA,
        int daysB,
        int daysC) {

    /** What an item's value class is reckoned from. */
    public enum ValueBasis {
        /** The cost of what was used in the last 365 days. */
        USED,
        /** The cost of what lies in stock. */
        LYING
    }

    /**
     * How far a count may be off without being taken again.
     *
     * @param pieces whether the figure is pieces, not millimetres
     * @param book the book figure
     */
    public long tolerance(boolean pieces, long book) {
        return Math.max(pieces ? tolerancePieces : toleranceMm, Math.abs(book) * tolerancePermille / 1000);
    }

    /** Whether the figures can be meant: nothing below zero, shares in order, intervals of a day or more. */
    boolean sound() {
        boolean tolerances = toleranceMm >= 0 && tolerancePieces >= 0 && tolerancePermille >= 0;
        boolean shares = 0 < shareA && shareA <= shareB && shareB <= 1000 && tolerancePermille <= 1000;
        return tolerances && shares && secondPersonFromMinor >= 0 && daysA > 0 && daysB >= daysA && daysC >= daysB;
    }
}
