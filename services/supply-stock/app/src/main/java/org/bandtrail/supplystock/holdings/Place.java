package org.bandtrail.supplystock.holdings;

import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;

/**
 * A place where material can be. Its text form is the kind's word, a colon and the identity, for example
 * {@code tree:T-0001}; supplier and written-off have no identity.
 */
public record Place(PlaceKind kind, String id) implements Comparable<Place> {
    public static final Place SUPPLIER = new Place(PlaceKind.SUPPLIER, "");
    public static final Place WRITTEN_OFF = new Place(PlaceKind.WRITTEN_OFF, "");

    public Place {
        boolean needsIdentity = kind != PlaceKind.SUPPLIER && kind != PlaceKind.WRITTEN_OFF;
        if (needsIdentity == id.isEmpty()) {
            throw new IllegalArgumentException("Place [%s:%s] %s."
                    .formatted(kind.word(), id, needsIdentity ? "needs an identity" : "has no identity"));
        }
    }

    public static Place depot(DepotId depot) {
        return new Place(PlaceKind.DEPOT, depot.value());
    }

    public static Place crew(PersonId person) {
        return new Place(PlaceKind.CREW, person.value());
    }

    public static Place tree(TreeId tree) {
        return new Place(PlaceKind.TREE, tree.value());
    }

    public static Place bag(BagId bag) {
        return new Place(PlaceKind.BAG, bag.value());
    }

    public static Place disposed(LoadId load) {
        return new Place(PlaceKind.DISPOSED, load.value());
    }

    public static Place missing(PersonId person) {
        return new Place(PlaceKind.MISSING, person.value());
    }

    /**
     * Reads the text form.
     *
     * @throws IllegalArgumentException naming the text
     */
    public static Place parse(String text) {
        int colon = text.indexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException(
                    "Place [%s] is not of the form kind:identity, such as depot:NORTH.".formatted(text));
        }
        return new Place(PlaceKind.of(text.substring(0, colon)), text.substring(colon + 1));
    }

    @Override
    public int compareTo(Place other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : id.compareTo(other.id);
    }

    @Override
    public String toString() {
        return kind.word() + ":" + id;
    }
}
