package org.bandtrail.siteinstalls.devices;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bandtrail.kernel.MaterialKind;
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
     * @throws IllegalArgumentException naming the kind if not exactly one part goes round the trunk, if two are cut
     *     from the same kind of material, which one list of pieces could not tell apart, or if it needs a guard and has
     *     none
     */
    public DeviceKind {
        parts = List.copyOf(parts);
        cautions = List.copyOf(cautions);
        if (parts.stream().filter(part -> part.role() == DevicePart.Role.AROUND).count() != 1) {
            throw new IllegalArgumentException("Of device [%s] one part goes round the trunk.".formatted(code));
        }
        for (MaterialKind material : MaterialKind.values()) {
            if (parts.stream()
                            .filter(part -> material.onReels() && part.material() == material)
                            .count()
                    > 1) {
                throw new IllegalArgumentException(
                        "Of device [%s] two parts are cut from %s.".formatted(code, words(material)));
            }
        }
        if (needsGuard && parts.stream().noneMatch(part -> part.role() == DevicePart.Role.GUARD)) {
            throw new IllegalArgumentException("Device [%s] needs a guard and lists none.".formatted(code));
        }
    }

    /**
     * Refuses items that do not fit the parts. A guard may be left out, nothing else that is cut.
     *
     * @param material tape or mesh
     * @param given whether an item of it is chosen
     * @throws IllegalArgumentException naming the kind and what to do
     */
    public void checkItem(MaterialKind material, boolean given) {
        Optional<DevicePart> part = cutFrom(material);
        if (part.isEmpty() && given) {
            throw new IllegalArgumentException(
                    "Device [%s] has no part of %s. Leave that item out.".formatted(code, words(material)));
        }
        if (part.isPresent() && !given && part.get().role() != DevicePart.Role.GUARD) {
            throw new IllegalArgumentException("Device [%s] has a part, %s, that is cut from %s. Choose the item."
                    .formatted(code, part.get().name(), words(material)));
        }
    }

    /** The part that is cut from this kind of material, empty if none is. */
    public Optional<DevicePart> cutFrom(MaterialKind material) {
        return parts.stream()
                .filter(part -> part.material() == material && material.onReels())
                .findFirst();
    }

    private static String words(MaterialKind material) {
        return material.name().toLowerCase(Locale.ROOT);
    }

    /** The part in this role, empty if there is none; of several the first. */
    public Optional<DevicePart> part(DevicePart.Role role) {
        return parts.stream().filter(part -> part.role() == role).findFirst();
    }
}
