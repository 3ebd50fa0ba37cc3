package org.bandtrail.supplystock.holdings;

/** The kinds of work in the field that move material; source and target of the move tell which it was. */
public enum FieldWork {
    /** From a person to a tree. */
    FITTED,
    /** From a tree into a waste bag. */
    TAKEN_DOWN,
    /** From a tree back to a person, to be used again. */
    PUT_BACK_INTO_USE,
    /** From a person into a waste bag, spoilt on the job. */
    SCRAPPED,
    /** From a waste bag away with a disposal load. */
    DISPOSED;

    /**
     * The work that moves material so.
     *
     * @throws IllegalStateException if no work of the field does. That is not a refusal: the teller's feed has to stop and
     *     be looked at.
     */
    public static FieldWork between(Place source, Place target) {
        FieldWork work =
                switch (source.kind()) {
                    case CREW -> target.kind() == PlaceKind.TREE ? FITTED : target.kind() == PlaceKind.BAG ? SCRAPPED : null;
                    case TREE ->
                        target.kind() == PlaceKind.BAG
                                ? TAKEN_DOWN
                                : target.kind() == PlaceKind.CREW ? PUT_BACK_INTO_USE : null;
                    case BAG -> target.kind() == PlaceKind.DISPOSED ? DISPOSED : null;
                    default -> null;
                };
        if (work == null) {
            throw new IllegalStateException(
                    "A move from %s to %s is no work of the field. Look at who told it.".formatted(source, target));
        }
        return work;
    }
}
