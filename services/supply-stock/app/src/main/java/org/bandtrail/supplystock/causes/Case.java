package org.bandtrail.supplystock.causes;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bandtrail.supplystock.holdings.Place;

/**
 * A balance that does not add up, with everything that may explain it.
 *
 * @param subject the reel or batch
 * @param pieces whether quantities are pieces, not millimetres
 * @param place where it does not add up
 * @param gap the balance: above zero something left unrecorded, below zero too much was recorded, 0 all is well
 * @param since when the last move to or from the place happened
 * @param others reels or batches that may be meant instead: one sign away, held by the same person, or open themselves
 * @param fromPerson what the person's custody gave to the field about that time, of any reel or batch
 */
public record Case(
        Suspect subject,
        boolean pieces,
        Place place,
        long gap,
        Instant since,
        List<Suspect> others,
        List<Told> fromPerson) {
    Custody custody() {
        return new Custody(place);
    }

    /** The subject's moves over the border of the custody; the moves of one event to one place are one. */
    List<Custody.Touch> touches() {
        return touches(subject);
    }

    List<Custody.Touch> touches(Suspect of) {
        List<Custody.Touch> touches = new ArrayList<>();
        of.told().stream().map(custody()::touch).filter(Objects::nonNull).forEach(touch -> {
            int last = touches.size() - 1;
            if (last >= 0 && touches.get(last).sameAs(touch)) {
                touches.set(last, touches.get(last).plus(touch));
            } else {
                touches.add(touch);
            }
        });
        return touches;
    }
}
