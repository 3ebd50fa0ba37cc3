package org.bandtrail.supplystock.crews;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a crew.
 *
 * @param name what people call it, null until formed
 */
public record Crew(@Nullable String name) {
    /** A crew nobody has formed. */
    public static final Crew UNKNOWN = new Crew(null);

    /**
     * What a command makes happen.
     *
     * @throws CrewRefused if the wish cannot be granted
     */
    public List<CrewEvent> decide(CrewCommand command) {
        return switch (command) {
            case CrewCommand.Form form -> {
                if (name != null) {
                    throw new CrewRefused.CrewFormedAlready(form.crewId(), name);
                }
                if (form.people().isEmpty() || form.name().isBlank()) {
                    throw new CrewRefused.CrewWithoutPeople(form.crewId());
                }
                yield List.of(new CrewEvent.Formed(
                        form.crewId(), form.name().strip(), form.depot(), form.people(), form.by(), form.occurred()));
            }
            case CrewCommand.ChangePeople change -> {
                if (name == null) {
                    throw new CrewRefused.CrewUnknown(change.crewId());
                }
                if (change.people().isEmpty()) {
                    throw new CrewRefused.CrewWithoutPeople(change.crewId());
                }
                yield List.of(
                        new CrewEvent.PeopleChanged(change.crewId(), change.people(), change.by(), change.occurred()));
            }
        };
    }

    /** The crew after an event. */
    public Crew evolve(CrewEvent event) {
        return switch (event) {
            case CrewEvent.Formed formed -> new Crew(formed.name());
            case CrewEvent.PeopleChanged unused -> this;
        };
    }
}
