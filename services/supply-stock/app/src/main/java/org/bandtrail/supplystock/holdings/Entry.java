package org.bandtrail.supplystock.holdings;

import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/**
 * One line in the books: what moved, which cost went where, who says so and when. Every event of a reel or a batch
 * carries one.
 *
 * @param moves in order; none if only the cost changed
 * @param charges cost that left stock or came back; empty if the material stayed in stock or had left it before
 * @param by who did it or reported it
 * @param occurred when it happened and when the books learnt of it
 */
public record Entry(List<Move> moves, List<Charge> charges, PersonId by, Occurred occurred) {
    public Entry {
        moves = List.copyOf(moves);
        charges = List.copyOf(charges);
    }
}
