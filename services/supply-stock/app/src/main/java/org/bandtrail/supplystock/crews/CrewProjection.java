package org.bandtrail.supplystock.crews;

import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.PersonId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps the register of crews. */
@Component
final class CrewProjection implements Projection {
    private final JdbcClient jdbc;

    CrewProjection(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "crew";
    }

    @Override
    public List<String> tables() {
        return List.of("crew");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(CrewEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        for (StoredEvent stored : page) {
            switch ((CrewEvent) stored.payload()) {
                case CrewEvent.Formed formed ->
                    jdbc.sql("""
                                    INSERT INTO crew (crew_id, name, depot_id, people) VALUES (?, ?, ?, ?)
                                    ON CONFLICT DO NOTHING""")
                            .param(formed.crewId().value())
                            .param(formed.name())
                            .param(formed.depot().value())
                            .param(texts(formed.people()))
                            .update();
                case CrewEvent.PeopleChanged changed ->
                    jdbc.sql("UPDATE crew SET people = ? WHERE crew_id = ?")
                            .param(texts(changed.people()))
                            .param(changed.crewId().value())
                            .update();
            }
        }
    }

    private static String[] texts(List<PersonId> people) {
        return people.stream().map(PersonId::value).toArray(String[]::new);
    }
}
