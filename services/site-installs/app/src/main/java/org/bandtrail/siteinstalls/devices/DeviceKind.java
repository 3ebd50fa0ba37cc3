package org.bandtrail.siteinstalls.devices;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A kind of device.
 *
 * @param code by which fittings and plans name it; never renamed
 * @param name in words
 * @param what it is and for what, in a sentence or two
 * @param parts what it is made of; one of them goes round the trunk
 * @param needsGuard whether wildlife sticks to it without a guard
 * @param openBelow whether its guard is meant to be open below
 * @param question what is asked before it is planned or fitted, null for nothing
 * @param source where it is described
 * @param cautions short sentences for the place of work
 */
public record DeviceKind(
        String code,
        String name,
        String what,
        List<DevicePart> parts,
        boolean needsGuard,
        boolean openBelow,
        @Nullable String question,
        String source,
        List<String> cautions) {
    /**
     * Keeps its own copies.
     *
     * @throws IllegalArgumentException naming the kind if not exactly one part goes round the trunk, or if it needs a
     *     guard and has none
     */
    public DeviceKind {
        parts = List.copyOf(parts);
        cautions = List.copyOf(cautions);
        if (parts.stream().filter(part -> part.role() == DevicePart.Role.AROUND).count() != 1) {
            throw new IllegalArgumentException("Of device [%s] one part goes round the trunk.".formatted(code));
        }
        if (needsGuard && parts.stream().noneMatch(part -> part.role() == DevicePart.Role.GUARD)) {
            throw new IllegalArgumentException("Device [%s] needs a guard and lists none.".formatted(code));
        }
    }

    /** The part in this role, empty if there is none; of several the first. */
    public Optional<DevicePart> part(DevicePart.Role role) {
        return parts.stream().filter(part -> part.role() == role).findFirst();
    }
}
