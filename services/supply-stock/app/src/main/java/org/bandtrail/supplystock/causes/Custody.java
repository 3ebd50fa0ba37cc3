package org.bandtrail.supplystock.causes;

import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * The place whose balance does not add up, seen together with what belongs to it: what a person has and what is missing
 * from the same person are one custody.
 *
 * @param place the place itself
 */
record Custody(Place place) {
    /** Whether the place belongs to this custody. */
    boolean holds(Place other) {
        return place.equals(other)
                || isPersons() && ofPerson(other) && place.id().equals(other.id());
    }

    /** Whether it is a person's. */
    boolean isPersons() {
        return ofPerson(place);
    }

    /** What left (negative) or entered (positive) it, or null if the move stays inside or outside. */
    @Nullable
    Touch touch(Told told) {
        boolean out = holds(told.source());
        boolean in = holds(told.target());
        if (out == in) {
            return null;
        }
        return new Touch(told, out ? told.target() : told.source(), out ? -told.quantity() : told.quantity());
    }

    private static boolean ofPerson(Place place) {
        return place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING;
    }

    /**
     * A move over the border of the custody.
     *
     * @param outside the place on the other side
     * @param change of the balance, negative when it left
     */
    record Touch(Told told, Place outside, long change) {
        long quantity() {
            return Math.abs(change);
        }

        boolean sameAs(Touch other) {
            return told.position() == other.told.position() && outside.equals(other.outside);
        }

        Touch plus(Touch other) {
            return new Touch(told, outside, change + other.change);
        }
    }
}
