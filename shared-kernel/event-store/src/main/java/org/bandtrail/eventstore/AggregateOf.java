package org.bandtrail.eventstore;

/**
 * Declares one kind of aggregate to the event store: its type name, its Axon shell, and the two sealed interfaces that
 * are its whole language. Every permitted command goes to the one handler of the sealed command interface; every
 * permitted event carries its own {@link StoredAs}.
 *
 * @param type stored type name; also the prefix of stored identifiers, so that reel 7 and batch 7 never meet
 * @param shell the package-private aggregate class
 * @param commands sealed interface whose records name their target by {@code @TargetAggregateIdentifier}
 * @param events sealed interface whose records are the stored events
 */
public record AggregateOf<T>(String type, Class<T> shell, Class<?> commands, Class<?> events) {
    public AggregateOf {
        if (!commands.isSealed() || !events.isSealed()) {
            throw new IllegalArgumentException(
                    "Aggregate [%s] needs sealed interfaces, so that nothing outside its two files can join its language."
                            .formatted(type));
        }
    }

    /** The stored identifier of the aggregate that a record names, for example {@code reel/R-0001}. */
    public String storedId(Object identity) {
        return type + "/" + identity;
    }
}
