package org.bandtrail.inspections.bands;

import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * How a band came down. Tape can never be used again; mesh and fasteners can, and with mesh
 * every other piece from a reel that can, such as burlap or the skirt of a funnel trap.
 *
 * @param mesh where the mesh goes, and every other piece from a reel that can be used again
 * @param fasteners where the fasteners go
 * @param bag the waste bag, null if nobody wrote it down
 */
public record Teardown(
        Onward mesh, Onward fasteners, @Nullable BagId bag) {

    /** The place everything that hung goes to, by kind. */
    Map<MaterialKind, String> takenOff(PersonId person) {
        String waste = Places.bag(bag == null ? Places.looseBag(person) : bag);
        String again = Places.crew(person);
        return Map.of(
                MaterialKind.TAPE, waste,
                MaterialKind.MESH, mesh == Onward.REUSE ? again : waste,
                MaterialKind.FASTENER, fasteners == Onward.REUSE ? again : waste);
    }

    /** The same as a fact about the band's pieces. */
    PieceFact fact(String teardown, Doer doer, Occurred occurred) {
        PersonId person = doer.person();
        return new PieceFact(
                teardown, PieceFact.Kind.TAKEN_DOWN, occurred.happened(), person, null, List.of(), takenOff(person));
    }
}
