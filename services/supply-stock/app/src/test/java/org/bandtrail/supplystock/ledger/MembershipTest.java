package org.bandtrail.supplystock.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.crews.CrewEvent;
import org.junit.jupiter.api.Test;

class MembershipTest {
    private static final Instant MAY = Instant.parse("2026-05-01T08:00:00Z");
    private static final Instant JUNE = Instant.parse("2026-06-01T08:00:00Z");
    private static final Instant JULY = Instant.parse("2026-07-01T08:00:00Z");
    private static final Instant AUGUST = Instant.parse("2026-08-01T08:00:00Z");
    private static final PersonId LEAD = new PersonId("P-LEAD");
    private final Membership crews = new Membership();

    private static List<PersonId> people(String... ids) {
        return Stream.of(ids).map(PersonId::new).toList();
    }

    private void formed(String crew, Instant at, String... ids) {
        crews.hear(
                new CrewEvent.Formed(new CrewId(crew), crew, new DepotId("NORTH"), people(ids), LEAD, Occurred.at(at)));
    }

    private void changed(String crew, Instant at, String... ids) {
        crews.hear(new CrewEvent.PeopleChanged(new CrewId(crew), people(ids), LEAD, Occurred.at(at)));
    }

    @Test
    void who_changes_crews_counts_for_the_old_one_until_then_and_for_the_new_one_from_then_on() {
        formed("A", MAY, "P-1", "P-2");
        formed("B", MAY, "P-3");
        changed("A", JUNE, "P-2");
        changed("B", JUNE, "P-3", "P-1");

        assertThat(crews.crewOf("P-1", JUNE.minusMillis(1), null)).isEqualTo("A");
        assertThat(crews.crewOf("P-1", JUNE, null)).isEqualTo("B");
        assertThat(crews.crewOf("P-2", JULY, null)).isEqualTo("A");
    }

    @Test
    void who_left_and_came_back_counts_for_none_in_between() {
        formed("A", MAY, "P-1", "P-2");
        changed("A", JUNE, "P-2");
        changed("A", AUGUST, "P-2", "P-1");

        assertThat(crews.crewOf("P-1", JULY, null)).isEqualTo(Membership.NONE);
        assertThat(crews.crewOf("P-1", AUGUST, null)).isEqualTo("A");
        assertThat(crews.stays()).hasSize(3);
    }

    @Test
    void a_crew_written_down_after_it_began_counts_for_what_came_before_and_a_stranger_for_none() {
        formed("A", JUNE, "P-1");
        changed("A", JULY, "P-2");

        assertThat(crews.crewOf("P-1", MAY, null)).isEqualTo("A");
        assertThat(crews.crewOf("P-1", AUGUST, null)).isEqualTo(Membership.NONE);
        assertThat(crews.crewOf("P-9", JULY, null)).isEqualTo(Membership.NONE);
    }

    @Test
    void the_crew_the_field_named_for_a_band_counts_for_its_fitting_and_for_nothing_later_on_it() {
        formed("A", MAY, "P-1");
        crews.named("band B-1", JUNE, "HELPERS");

        assertThat(crews.crewOf("P-1", JUNE, "band B-1")).isEqualTo("HELPERS");
        assertThat(crews.crewOf("P-1", JULY, "band B-1")).isEqualTo("A");
        assertThat(crews.crewOf("P-1", JUNE, "band B-2")).isEqualTo("A");
    }
}
