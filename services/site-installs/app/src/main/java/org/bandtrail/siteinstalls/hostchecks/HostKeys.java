package org.bandtrail.siteinstalls.hostchecks;

import java.util.List;
import java.util.Optional;
import org.bandtrail.siteinstalls.species.EppoCode;

/**
 * The keys that come with the house, one for a pest.
 *
 * @param keys in the order people choose from
 */
public record HostKeys(List<HostKey> keys) {
    /** Keeps its own copy. */
    public HostKeys {
        keys = List.copyOf(keys);
    }

    /** The key to the hosts of this pest, empty if there is none. */
    public Optional<HostKey> of(EppoCode pest) {
        return keys.stream().filter(key -> key.pest().equals(pest)).findFirst();
    }
}
