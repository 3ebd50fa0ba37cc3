package org.bandtrail.supplystock.crews;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class CrewTest {
    private static final CrewId CREW = new CrewId("C-1");
    private static final PersonId ANNA = new PersonId("P-07");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-04-01T08:00:00Z"));

    @Test
    void a_crew_of_one_is_a_crew_and_a_crew_of_nobody_is_refused() {
        assertThat(Crew.UNKNOWN.decide(form(List.of(ANNA)))).hasSize(1);
        assertThatExceptionOfType(CrewRefused.CrewWithoutPeople.class)
                .isThrownBy(() -> Crew.UNKNOWN.decide(form(List.of())));
    }

    @Test
    void a_crew_is_formed_once_and_its_people_may_change() {
        Crew formed =
                Crew.UNKNOWN.evolve(Crew.UNKNOWN.decide(form(List.of(ANNA))).getFirst());

        assertThatExceptionOfType(CrewRefused.CrewFormedAlready.class)
                .isThrownBy(() -> formed.decide(form(List.of(ANNA))));
        assertThat(formed.decide(new CrewCommand.ChangePeople(CREW, List.of(new PersonId("P-08")), ANNA, NOW)))
                .hasSize(1);
    }

    @Test
    void people_of_an_unknown_crew_cannot_change() {
        assertThatExceptionOfType(CrewRefused.CrewUnknown.class)
                .isThrownBy(() -> Crew.UNKNOWN.decide(new CrewCommand.ChangePeople(CREW, List.of(ANNA), ANNA, NOW)));
    }

    private static CrewCommand form(List<PersonId> people) {
        return new CrewCommand.Form(CREW, "First crew", new DepotId("NORTH"), people, ANNA, NOW);
    }
}
