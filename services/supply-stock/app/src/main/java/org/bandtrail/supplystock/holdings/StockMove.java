package org.bandtrail.supplystock.holdings;

import java.util.Optional;

/** The ways a depot moves its stock about; none of them uses anything up. Each knows between which places it goes. */
public enum StockMove {
    /** Within one depot: into a bin, into another bin, or out of the bins. */
    PUT_IN_BIN("put in its bin"),
    /** Out of use until somebody releases it, at the same depot. */
    SET_ASIDE("set aside"),
    /** Accepted after delivery, or released after it was set aside. */
    RELEASED("released"),
    /** Onto a vehicle, from a depot or from a person. */
    LOADED("loaded"),
    /** Off a vehicle, to a depot or to a person. */
    UNLOADED("unloaded"),
    /** On its way to another place with a transfer. */
    SENT("sent"),
    /** A transfer that was called off: back to where it started. */
    CALLED_OFF("called off"),
    /** Back to the supplier: it takes its cost with it. */
    SENT_BACK("sent back");

    private final String word;

    StockMove(String word) {
        this.word = word;
    }

    /** The trade's word, for histories. */
    public String word() {
        return word;
    }

    /** The move that brings back what this one took, if a person can do that by hand; a transfer is called off instead. */
    public Optional<StockMove> opposite() {
        return switch (this) {
            case PUT_IN_BIN -> Optional.of(PUT_IN_BIN);
            case SET_ASIDE -> Optional.of(RELEASED);
            case RELEASED -> Optional.of(SET_ASIDE);
            case LOADED -> Optional.of(UNLOADED);
            case UNLOADED -> Optional.of(LOADED);
            case SENT, CALLED_OFF, SENT_BACK -> Optional.empty();
        };
    }

    /** Whether this move can go between these places. */
    public boolean fits(Place source, Place target) {
        PlaceKind from = source.kind();
        PlaceKind to = target.kind();
        return !source.equals(target)
                && switch (this) {
                    case PUT_IN_BIN -> from == PlaceKind.DEPOT && to == PlaceKind.DEPOT && sameDepot(source, target);
                    case SET_ASIDE -> from == PlaceKind.DEPOT && to == PlaceKind.SET_ASIDE && sameDepot(source, target);
                    case RELEASED -> from == PlaceKind.SET_ASIDE && to == PlaceKind.DEPOT && sameDepot(source, target);
                    case LOADED -> (from == PlaceKind.DEPOT || from == PlaceKind.CREW) && to == PlaceKind.VEHICLE;
                    case UNLOADED -> from == PlaceKind.VEHICLE && (to == PlaceKind.DEPOT || to == PlaceKind.CREW);
                    case SENT -> travels(from) && to == PlaceKind.IN_TRANSIT;
                    case CALLED_OFF -> from == PlaceKind.IN_TRANSIT && travels(to);
                    case SENT_BACK ->
                        (from == PlaceKind.DEPOT || from == PlaceKind.SET_ASIDE) && to == PlaceKind.SUPPLIER;
                };
    }

    private static boolean travels(PlaceKind kind) {
        return kind == PlaceKind.DEPOT || kind == PlaceKind.SET_ASIDE || kind == PlaceKind.VEHICLE;
    }

    private static boolean sameDepot(Place source, Place target) {
        return java.util.Objects.equals(source.depotId(), target.depotId());
    }
}
