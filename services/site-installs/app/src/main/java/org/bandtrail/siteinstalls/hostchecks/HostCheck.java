package org.bandtrail.siteinstalls.hostchecks;

import java.util.List;
import org.bandtrail.siteinstalls.hostchecks.HostCheckCommand.NoteHostCheck;
import org.bandtrail.siteinstalls.hostchecks.HostCheckEvent.HostCheckMade;

/**
 * The host checks of one tree.
 *
 * @param made how many there were
 */
public record HostCheck(int made) {
    /** Before the first. */
    public static final HostCheck NONE = new HostCheck(0);

    /**
     * Decides a command; nothing is refused.
     *
     * @throws IllegalArgumentException if an answer is none of the key
     */
    public List<HostCheckEvent> decide(HostCheckCommand command) {
        return switch (command) {
            case NoteHostCheck note ->
                List.of(new HostCheckMade(
                        note.treeId(),
                        note.key().pest(),
                        note.key().version(),
                        note.answers(),
                        note.key().verdict(note.answers()),
                        note.by(),
                        note.when()));
        };
    }

    /** The checks after the event. */
    public HostCheck evolve(HostCheckEvent event) {
        return switch (event) {
            case HostCheckMade check -> new HostCheck(made + 1);
        };
    }
}
