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
    DISPOSED,
    /**
     * Between two places of the field, because a fact told late shows that an earlier one went elsewhere: from bag to
     * bag, from a bag back to a person or tree, from one load to another.
     */
    CORRECTED;

    /**
     * The work that moves material so.
     *
     * @throws IllegalStateException if no work of the field does. That is not a refusal: the teller's feed has to stop
     *     and be looked at.
     */
    public static FieldWork between(Place source, Place target) {
        FieldWork work = switch (source.kind()) {
            case CREW ->
                switch (target.kind()) {
                    case TREE -> FITTED;
                    case BAG -> SCRAPPED;
                    case CREW -> CORRECTED;
                    default -> null;
                };
            case TREE ->
                switch (target.kind()) {
                    case BAG -> TAKEN_DOWN;
                    case CREW -> PUT_BACK_INTO_USE;
                    case TREE -> CORRECTED;
                    default -> null;
                };
            case BAG ->
                switch (target.kind()) {
                    case DISPOSED -> DISPOSED;
                    case BAG, CREW, TREE -> CORRECTED;
                    default -> null;
                };
            case DISPOSED -> target.kind() == PlaceKind.BAG || target.kind() == PlaceKind.DISPOSED ? CORRECTED : null;
            default -> null;
        };
        if (work == null) {
            throw new IllegalStateException(
                    "A move from %s to %s is no work of the field. Look at who told it.".formatted(source, target));
        }
        return work;
    }
}
