package org.bandtrail.supplystock.holdings;

/**
 * A quantity that changes place. Nothing else ever changes a balance.
 *
 * @param source where it leaves
 * @param target where it arrives
 * @param quantity millimetres of a reel or pieces of a batch, more than zero
 */
public record Move(Place source, Place target, long quantity) {
    public Move {
        if (quantity <= 0) {
            throw new IllegalArgumentException(
                    "A move of [%d] from %s to %s moves nothing.".formatted(quantity, source, target));
        }
        if (source.equals(target)) {
            throw new IllegalArgumentException("A move from [%s] to itself is not a move.".formatted(source));
        }
    }
}
