package org.bandtrail.local;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a person is told when everything is up: where to look and as whom. */
final class Welcome {

    private Welcome() {}

    /**
     * The text printed at the end of a start.
     *
     * @param house what is running
     * @param people who can sign in; one of each role is named
     * @param password with which they sign in
     * @return several lines
     */
    static String text(House house, List<DemoPerson> people, String password) {
        return """

                Bandtrail is running. Open %s

                Sign in with the password %s (unless it was changed) as
                %s

                The services, each with its documentation under /swagger-ui/index.html:
                  supply-stock  %s
                  site-installs %s
                  inspections   %s

                The data stays in the data folder and survives restarts. Stop with Ctrl-C.""".formatted(
                        house.at(Service.FRONT_DESK),
                        password,
                        oneOfEachRole(people),
                        house.at(Service.SUPPLY_STOCK),
                        house.at(Service.SITE_INSTALLS),
                        house.at(Service.INSPECTIONS));
    }

    private static String oneOfEachRole(List<DemoPerson> people) {
        Set<String> seen = new HashSet<>();
        return people.stream()
                .filter(person -> seen.add(person.role()))
                .map(person -> "  %-10s %s".formatted(person.username(), may(person.role())))
                .collect(Collectors.joining("\n"));
    }

    private static String may(String role) {
        return switch (role) {
            case "CREW" -> "crew: fits bands, visits, replaces, takes down";
            case "DEPOT" -> "depot: receives, hands out, takes back, settles what does not add up";
            case "FINANCE" -> "finance: sees what was spent, where and on what";
            default -> "lead: plans sites and trees, looks after people, may do all of it";
        };
    }
}
