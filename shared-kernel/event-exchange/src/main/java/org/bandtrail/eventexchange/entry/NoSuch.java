package org.bandtrail.eventexchange.entry;

import org.bandtrail.eventstore.Refusal;

/** What a request names does not exist here; answered with status 404. */
public final class NoSuch extends Refusal {
    private static final long serialVersionUID = 1L;

    /**
     * Says what is not there.
     *
     * @param kind for example reel
     * @param identity what the request called it
     */
    public NoSuch(String kind, Object identity) {
        super("There is no %s [%s] here.".formatted(kind, identity));
    }

    @Override
    public int status() {
        return 404;
    }
}
