package org.bandtrail.frontdesk.people;

import java.util.List;
import org.bandtrail.frontdesk.wording.Units;
import org.jspecify.annotations.Nullable;

/**
 * One person as the front desk knows them.
 *
 * @param personId the identity events carry
 * @param name the name shown on pages
 * @param username how the person signs in, or null if the person does not
 * @param theme auto, day or dark
 */
public record Person(
        String personId,
        String name,
        @Nullable String phone,
        @Nullable String username,
        Units units,
        String theme,
        boolean erased,
        List<Role> roles) {

    /** Tells whether the person has any of these roles; a lead may do what depot and crew may do. */
    public boolean may(Role... wanted) {
        return List.of(wanted).stream().anyMatch(role -> roles.contains(role) || leadStandsInFor(role));
    }

    private boolean leadStandsInFor(Role role) {
        return roles.contains(Role.LEAD) && role != Role.FINANCE;
    }

    /** The page this person begins the day on. */
    public String frontDoor() {
        return roles.size() == 1 ? roles.getFirst().frontDoor() : "/";
    }

    /** The roles in words, for example {@code depot, lead}. */
    public String rolesInWords() {
        return String.join(", ", roles.stream().map(Role::word).toList());
    }
}
