package org.bandtrail.eventexchange.entry;

import org.bandtrail.kernel.PersonId;

/**
 * The person for whom a request is made, as a controller argument. Taken from the header {@code Bandtrail-Person},
 * which the front desk sets after it signed the person in; the service key vouches for it.
 */
public record ActingPerson(PersonId id) {
    /** Name of the header. */
    public static final String HEADER = "Bandtrail-Person";
}
