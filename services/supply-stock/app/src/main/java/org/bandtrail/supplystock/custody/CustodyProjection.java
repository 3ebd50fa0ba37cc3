package org.bandtrail.supplystock.custody;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventstore.Projection;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.crews.CrewEvent;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps every step of custody, and settles again the kits that a page touches. */
@Component
final class CustodyProjection implements Projection {
    private final CustodyTables tables;

    CustodyProjection(JdbcClient jdbc) {
        this.tables = new CustodyTables(jdbc);
    }

    @Override
    public String name() {
        return "custody";
    }

    @Override
    public List<String> tables() {
        return List.of("custody_step", "custody_crew", "kit_line_settled", "kit_settlement");
    }

    @Override
    public List<Class<?>> listensTo() {
        return List.of(ReelEvent.class, BatchEvent.class, CrewEvent.class);
    }

    @Override
    public void apply(List<StoredEvent> page) {
        List<CustodyStep> steps = new ArrayList<>();
        List<CrewMembers> crews = new ArrayList<>();
        for (StoredEvent stored : page) {
            if (stored.payload() instanceof CrewEvent event) {
                crews.add(members(stored.position(), event));
            } else {
                steps.addAll(CustodyMoves.of(stored));
            }
        }
        tables.insertCrews(crews);
        if (steps.isEmpty()) {
            return;
        }
        tables.insertSteps(steps);
        List<String> kits = tables.kitsOf(steps);
        if (!kits.isEmpty()) {
            tables.replace(kits, Settling.of(tables.stepsOf(kits)));
        }
    }

    private static CrewMembers members(long position, CrewEvent event) {
        return switch (event) {
            case CrewEvent.Formed formed -> members(position, event, formed.people(), formed.occurred());
            case CrewEvent.PeopleChanged changed -> members(position, event, changed.people(), changed.occurred());
        };
    }

    private static CrewMembers members(long position, CrewEvent event, List<PersonId> people, Occurred occurred) {
        return new CrewMembers(
                event.crewId().value(),
                position,
                people.stream().map(PersonId::value).toList(),
                occurred.happened(),
                occurred.recorded());
    }
}
