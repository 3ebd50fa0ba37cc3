package org.bandtrail.supplystock.holdings;

import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Identity;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.jspecify.annotations.Nullable;

/**
 * A place where material can be. Its text form is the kind's word, a colon and the identity, for example
 * {@code tree:T-0001}; supplier and written-off have no identity.
 * A bin is written behind its depot, {@code depot:NORTH/A-03}.
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

    /** A bin of a depot. */
    public static Place bin(DepotId depot, String bin) {
        return new Place(PlaceKind.DEPOT, depot.value() + "/" + Identity.checked("bin", bin));
    }

    public static Place setAside(DepotId depot) {
        return new Place(PlaceKind.SET_ASIDE, depot.value());
    }

    /** In a vehicle, by its identity. */
    public static Place vehicle(String vehicle) {
        return new Place(PlaceKind.VEHICLE, Identity.checked("vehicle", vehicle));
    }

    /** On the way, by the transfer's identity. */
    public static Place inTransit(String transfer) {
        return new Place(PlaceKind.IN_TRANSIT, Identity.checked("transfer", transfer));
    }

    /** Where a wide reel's length goes and its strips come from, by the slitting's identity. */
    public static Place slit(String slitting) {
        return new Place(PlaceKind.SLIT, Identity.checked("slitting", slitting));
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

    /** The depot this is in or set aside at, or null if it is at no depot. */
    public @Nullable DepotId depotId() {
        return kind == PlaceKind.DEPOT || kind == PlaceKind.SET_ASIDE ? new DepotId(id.split("/", 2)[0]) : null;
    }

    /** The bin, or null if it lies loose in the depot or is at no depot. */
    public @Nullable String bin() {
        int slash = kind == PlaceKind.DEPOT ? id.indexOf('/') : -1;
        return slash < 0 ? null : id.substring(slash + 1);
    }

    /** Whether this is in this depot's store, loose or in a bin. */
    public boolean inDepot(DepotId depot) {
        return kind == PlaceKind.DEPOT && depot.equals(depotId());
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
