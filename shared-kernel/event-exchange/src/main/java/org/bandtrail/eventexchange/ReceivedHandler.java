package org.bandtrail.eventexchange;

/**
 * What a service does with the events of one foreign service. It runs inside the reader's transaction; whatever it
 * throws that is not a passing failure stops the feed at that event.
 */
public interface ReceivedHandler {
    /** The publishing service, for example {@code /bandtrail/site-installs}. */
    String source();

    /** Whether events of this published name are for this handler. Types nobody handles are skipped and counted. */
    boolean handles(String type);

    /**
     * Does what follows from the event, once.
     *
     * @throws UnreadableEvent if the data does not fit its type
     */
    void handle(Envelope envelope);
}
