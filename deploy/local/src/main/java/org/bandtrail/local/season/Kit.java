package org.bandtrail.local.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What one person carries in one week: reels and pins of one or more handouts, and mesh taken off for use again. */
final class Kit {
    static final String TAPE = "TAPE-127";
    static final String MESH = "MESH-305-12";
    static final String FINE_MESH = "MESH-457-06";

    final String holder;

    /** The reels of each handout by kit identity, in order. */
    final Map<String, List<String>> handouts = new LinkedHashMap<>();

    /** What is physically there, by reel. */
    final Map<String, Held> reels = new LinkedHashMap<>();

    /** Pieces physically there, by batch. */
    final Map<String, Long> pins = new LinkedHashMap<>();

    /** A reel nobody wrote a handout for, or null. */
    @Nullable
    String unwritten;

    Kit(String holder) {
        this.holder = holder;
    }

    /** Takes handed-out reels into the bag. */
    void pack(String kitId, List<Held> taken) {
        List<String> ids = handouts.computeIfAbsent(kitId, id -> new ArrayList<>());
        for (Held held : taken) {
            ids.add(held.reelId);
            Held there = reels.get(held.reelId);
            if (there == null) {
                reels.put(held.reelId, held);
            } else {
                there.join(held);
            }
        }
    }

    /** The reel to cut this length from, an unwritten one first, then in the order of the handout. */
    @Nullable
    Held reelFor(String material, long mm) {
        Held extra = unwritten == null ? null : reels.get(unwritten);
        if (extra != null && extra.material.equals(material) && extra.woundMm() >= mm) {
            return extra;
        }
        return reels.values().stream()
                .filter(held -> held.material.equals(material) && held.woundMm() >= mm)
                .findFirst()
                .orElse(null);
    }

    /** The longest wound length of a material here. */
    long longest(String material) {
        return reels.values().stream()
                .filter(held -> held.material.equals(material))
                .mapToLong(Held::woundMm)
                .max()
                .orElse(0);
    }

    /** A laid-aside mesh piece that goes round with at most 250 mm to spare, already taken; or null. */
    @Nullable
    CutPiece usedMesh(long shortestMm) {
        for (Held held : reels.values()) {
            long piece = held.takePiece(shortestMm, shortestMm + 250);
            if (piece > 0) {
                return new CutPiece(held.reelId, piece);
            }
        }
        return null;
    }

    /** Lays mesh from a tree aside for use again. */
    void layAside(CutPiece mesh, String material) {
        reels.computeIfAbsent(mesh.reelId(), reel -> new Held(reel, material, 0))
                .layAside(mesh.mm());
    }

    /** The batch to take pieces from; they are taken. */
    String usePins(long count) {
        String batch = pins.keySet().iterator().next();
        pins.merge(batch, -count, Long::sum);
        return batch;
    }

    /** A piece and the reel it came from. */
    record CutPiece(String reelId, long mm) {}
}
