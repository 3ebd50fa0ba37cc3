package org.bandtrail.frontdesk.neighbours.field;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** The questions asked of inspections: what is due, what was seen, what waits in bags. */
public final class Inspections {
    private static final ParameterizedTypeReference<Rows<Visits.DueBand>> BANDS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Visits.Bag>> BAGS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Visits.Animal>> ANIMALS =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Inspections behind this neighbour. */
    public Inspections(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** Bands in the order in which they are due. */
    public Rows<Visits.DueBand> bands(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/bands", asked, BANDS);
    }

    /** One band with its visits. */
    public Visits.WholeBand band(String bandId) {
        return neighbour.get("/bands/" + bandId, Map.of(), Visits.WholeBand.class);
    }

    /** Animals found on bands, newest first; open ones only if asked. */
    public Rows<Visits.Animal> animals(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/bycatch", asked, ANIMALS);
    }

    /** All waste bags. */
    public List<Visits.Bag> bags() {
        return neighbour.everything(after -> neighbour.get("/bags", Rows.withAfter(Map.of(), after), BAGS));
    }
}
