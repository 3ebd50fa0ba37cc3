package org.bandtrail.supplystock.kits;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.TreeList;
import org.bandtrail.supplystock.kitlists.WishedReel;
import org.jspecify.annotations.Nullable;

/**
 * A kit as it is asked for over HTTP.
 *
 * @param tape the tape it holds, or null for none; likewise mesh and fastener
 * @param rule figures of the list's own; what is not given comes from the usual rule
 * @param trees in the order the crew walks
 * @param reels from which reels trees ought to be cut, as a cut plan says; null or left out for the usual choice
 * @param until when the reservation lapses, or null for the usual time
 */
record KitWish(
        UUID commandId,
        KitId kitId,
        DepotId depotId,
        CrewId crewId,
        PersonId personId,
        @Nullable MaterialCode tape,
        @Nullable MaterialCode mesh,
        @Nullable MaterialCode fastener,
        @Nullable Figures rule,
        List<TreeList.Line> trees,
        @Nullable List<WishedReel> reels,
        @Nullable Instant until,
        Instant happenedAt) {

    /** Figures of the rule; what is null comes from the usual one. */
    record Figures(
            @Nullable Length overlap,
            @Nullable Length tab,
            @Nullable Length meshExtra,
            @Nullable Length fastenerSpacing,
            @Nullable Pieces fewestFasteners) {}

    /** The materials by kind, without those the kit does not hold. */
    Map<MaterialKind, MaterialCode> materials() {
        Map<MaterialKind, MaterialCode> materials = new EnumMap<>(MaterialKind.class);
        put(materials, MaterialKind.TAPE, tape);
        put(materials, MaterialKind.MESH, mesh);
        put(materials, MaterialKind.FASTENER, fastener);
        return materials;
    }

    private static void put(
            Map<MaterialKind, MaterialCode> materials, MaterialKind kind, @Nullable MaterialCode material) {
        if (material != null) {
            materials.put(kind, material);
        }
    }

    /** The wished reels for one kind of material. */
    List<WishedReel> reels(MaterialKind kind) {
        return reels == null
                ? List.of()
                : reels.stream().filter(wish -> wish.kind() == kind).toList();
    }

    /** The usual rule with the figures of this list. */
    KitRule rule(KitRule usual) {
        if (rule == null) {
            return usual;
        }
        KitRule own = new KitRule(
                Objects.requireNonNullElse(rule.overlap(), usual.overlap()),
                Objects.requireNonNullElse(rule.tab(), usual.tab()),
                Objects.requireNonNullElse(rule.meshExtra(), usual.meshExtra()),
                Objects.requireNonNullElse(rule.fastenerSpacing(), usual.spacing()),
                Objects.requireNonNullElse(rule.fewestFasteners(), usual.fewest()),
                usual.source());
        return own.equals(usual)
                ? usual
                : new KitRule(
                        own.overlap(),
                        own.tab(),
                        own.meshExtra(),
                        own.spacing(),
                        own.fewest(),
                        "given with the list, the rest " + usual.source());
    }
}
