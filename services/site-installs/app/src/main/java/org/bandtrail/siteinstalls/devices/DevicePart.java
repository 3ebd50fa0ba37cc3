package org.bandtrail.siteinstalls.devices;

import org.bandtrail.kernel.MaterialKind;

/**
 * One part of a kind of device.
 *
 * @param name in words
 * @param role around for what goes round the trunk, guard, pins, or other
 * @param material of what kind of stock it is taken: tape and mesh by length, fasteners by count
 * @param reusable whether it may go on another trunk when it is sound
 * @param rule how much of it
 * @param source where the rule comes from
 */
public record DevicePart(
        String name, Role role, MaterialKind material, boolean reusable, PieceRule rule, String source) {
    /** Refuses a length of something that is counted, and the other way round. */
    public DevicePart {
        if (material.onReels() != rule instanceof PieceRule.ByGirth) {
            throw new IllegalArgumentException("Part [%s]: %s is not taken %s."
                    .formatted(name, material, material.onReels() ? "by count" : "by length"));
        }
    }

    /** What a part is on a trunk. */
    public enum Role {
        /** The piece that goes round the trunk; told as the tape of a fitting. */
        AROUND,
        /** What keeps wildlife off; told as the mesh of a fitting. */
        GUARD,
        /** Pins or tacks; told as the fasteners of a fitting. */
        PINS,
        /** Anything else; told beside them. */
        OTHER
    }
}
