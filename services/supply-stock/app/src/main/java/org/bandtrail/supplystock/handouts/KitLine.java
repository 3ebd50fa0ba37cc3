package org.bandtrail.supplystock.handouts;

import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;

/**
 * One reel or some pieces of one batch in a kit.
 *
 * @param id identity of the reel or batch
 * @param quantity millimetres of a reel, pieces of a batch
 */
public record KitLine(String id, MaterialCode material, MaterialKind kind, long quantity) {}
