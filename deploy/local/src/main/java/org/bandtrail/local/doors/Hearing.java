package org.bandtrail.local.doors;

import java.time.Duration;
import tools.jackson.databind.JsonNode;

/**
 * Waits until a service has read what another has published, so that a fact that builds on an earlier one finds it. The
 * publisher's head is in a header of its feed; the reader shows its positions at {@code /feeds}.
 */
public final class Hearing {
    private static final Duration PAUSE = Duration.ofMillis(25);
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private final String person;

    public Hearing(String person) {
        this.person = person;
    }

    /**
     * Returns when the reader has dealt with everything the publisher has published by now.
     *
     * @throws SeasonStopped if the feed has stopped, or is not read within two minutes
     */
    public void await(FrontDoor reader, FrontDoor publisher) {
        long head = publisher.feedHead(person);
        long giveUp = System.nanoTime() + PATIENCE.toNanos();
        while (position(reader, publisher) < head) {
            if (System.nanoTime() > giveUp) {
                throw new SeasonStopped("%s has not read %s up to position %d within %d min. Look at its /feeds page."
                        .formatted(reader.service(), publisher.service(), head, PATIENCE.toMinutes()));
            }
            pause();
        }
    }

    private long position(FrontDoor reader, FrontDoor publisher) {
        JsonNode feeds = reader.get("/feeds", person, "waiting for " + reader.service());
        for (JsonNode feed : feeds.path("rows")) {
            if (feed.path("feed").asString("").equals(publisher.service())) {
                if (feed.path("state").asString("").equals("stopped")) {
                    throw new SeasonStopped("%s cannot read %s any further: %s"
                            .formatted(
                                    reader.service(),
                                    publisher.service(),
                                    feed.path("why").asString("")));
                }
                return feed.path("position").asLong();
            }
        }
        return 0;
    }

    public static void pause() {
        try {
            Thread.sleep(PAUSE);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new SeasonStopped("Loading was interrupted; what is loaded stays.", stopped);
        }
    }
}
