package org.bandtrail.supplystock.kitlists;

import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.supplystock.holdings.Place;

/**
 * One reel, or some pieces of one batch, that a kit takes.
 *
 * @param id identity of the reel or batch
 * @param place the bin where it lay when it was chosen
 * @param there what lay there and could be used then, millimetres or pieces
 * @param quantity what the trees take of it, millimetres or pieces; a reel goes out whole all the same
 * @param cuts what is cut for which tree, in the order the crew walks; empty for a batch
 */
public record Pick(
        String id, MaterialCode material, MaterialKind kind, Place place, long there, long quantity, List<Cut> cuts) {}
