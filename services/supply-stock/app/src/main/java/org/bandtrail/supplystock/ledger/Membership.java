package org.bandtrail.supplystock.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.crews.CrewEvent;
import org.jspecify.annotations.Nullable;

/**
 * Who was in which crew when, so that what was used counts for the crew of its day and stays there when people change
 * crews. Where the field named the crew of a band it fitted, that counts, whoever is in which crew.
 */
final class Membership {
    /** No crew. */
    static final String NONE = "";

    /** A person in a crew, until somebody changed that; {@code until} is null while it lasts. */
    record Stay(
            String person,
            String crew,
            Instant from,
            @Nullable Instant until) {
        private boolean at(Instant moment) {
            return !from.isAfter(moment) && (until == null || until.isAfter(moment));
        }
    }

    private final List<Stay> stays = new ArrayList<>();
    private final Map<Named, String> named = new HashMap<>();

    /** A band as the field tells of fitting it: its note in the books, and when. */
    private record Named(String note, Instant fitted) {}

    void load(Stay stay) {
        stays.add(stay);
    }

    /** The field named the crew that fitted a band. */
    void named(String note, Instant fitted, String crew) {
        named.put(new Named(note, fitted), crew);
    }

    List<Stay> stays() {
        return List.copyOf(stays);
    }

    void hear(CrewEvent event) {
        switch (event) {
            case CrewEvent.Formed formed ->
                people(
                        formed.crewId().value(),
                        formed.people(),
                        formed.occurred().happened());
            case CrewEvent.PeopleChanged changed ->
                people(
                        changed.crewId().value(),
                        changed.people(),
                        changed.occurred().happened());
        }
    }

    private void people(String crew, List<PersonId> people, Instant now) {
        List<String> remaining =
                new ArrayList<>(people.stream().map(PersonId::value).distinct().toList());
        stays.replaceAll(stay -> {
            boolean lasts = stay.crew().equals(crew) && stay.until() == null;
            return !lasts || remaining.remove(stay.person()) ? stay : new Stay(stay.person(), crew, stay.from(), now);
        });
        remaining.forEach(person -> stays.add(new Stay(person, crew, now, null)));
    }

    /**
     * The crew a use counts for: the one the field named, else the one the person was in then. Crews are often written
     * down after they began, so before a person's first crew that first one counts. Of two at once the first by name.
     *
     * @param note of the fact, such as {@code band B-1}, or null
     * @return the crew, or {@link #NONE}
     */
    String crewOf(String person, Instant moment, @Nullable String note) {
        String told = note == null ? null : named.get(new Named(note, moment));
        if (told != null) {
            return told;
        }
        List<Stay> own =
                stays.stream().filter(stay -> stay.person().equals(person)).toList();
        return own.stream()
                .filter(stay -> stay.at(moment))
                .map(Stay::crew)
                .min(Comparator.naturalOrder())
                .orElseGet(() -> own.stream()
                        .min(Comparator.comparing(Stay::from).thenComparing(Stay::crew))
                        .filter(first -> first.from().isAfter(moment))
                        .map(Stay::crew)
                        .orElse(NONE));
    }
}
