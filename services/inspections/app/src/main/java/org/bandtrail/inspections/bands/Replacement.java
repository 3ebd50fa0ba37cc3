package org.bandtrail.inspections.bands;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Onward;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Places;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * Pieces renewed on a visit: of each kind that is put up, everything of that kind that hung before comes off.
 *
 * @param putUp new pieces
 * @param oldMesh where the old mesh goes; old tape and old fasteners go into the bag
 * @param bag the waste bag, null if nobody wrote it down
 */
public record Replacement(
        List<Portion> putUp, Onward oldMesh, @Nullable BagId bag) {
    public Replacement {
        putUp = List.copyOf(putUp);
    }

    /** The place each renewed kind's old pieces go to. */
    Map<MaterialKind, String> takenOff(PersonId person) {
        String waste = Places.bag(bag == null ? Places.looseBag(person) : bag);
        Map<MaterialKind, String> places = new EnumMap<>(MaterialKind.class);
        for (Portion portion : putUp) {
            boolean reused = portion.kind() == MaterialKind.MESH && oldMesh == Onward.REUSE;
            places.put(portion.kind(), reused ? Places.crew(person) : waste);
        }
        return places;
    }

    /** The same as a fact about the band's pieces. */
    PieceFact fact(String visit, Doer doer, Occurred occurred) {
        PersonId person = doer.person();
        return new PieceFact(visit, PieceFact.Kind.RENEWED, occurred.happened(), person, null, putUp, takenOff(person));
    }

    /** Tells whether something went into a bag that nobody named. */
    boolean bagNotNamed(PersonId person) {
        return bag == null && takenOff(person).containsValue(Places.bag(Places.looseBag(person)));
    }
}
