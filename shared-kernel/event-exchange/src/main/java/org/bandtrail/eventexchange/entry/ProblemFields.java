package org.bandtrail.eventexchange.entry;

import java.util.Map;

/**
 * An exception that has more to say in its problem than type, title and detail, for example the {@code questions} of
 * please-confirm. The fields become extension members of the problem (RFC 9457, section 3.2).
 */
public interface ProblemFields {
    /** Further members by name; none of the names that RFC 9457 reserves. */
    Map<String, ?> problemFields();
}
