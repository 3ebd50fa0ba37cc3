package org.bandtrail.siteinstalls.published;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.WhenAppended;
import org.bandtrail.siteinstalls.bands.BandEvent;
import org.bandtrail.siteinstalls.bands.Fasteners;
import org.bandtrail.siteinstalls.bands.Piece;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.siteinstalls.contract.v1.MaterialMove;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.devices.DevicePart;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Tells of fitted bands. What inspections told us is not told again. */
@Component
final class PublishedBands implements WhenAppended {
    private final Outbox outbox;
    private final DeviceKinds kinds;

    PublishedBands(Outbox outbox, DeviceKinds kinds) {
        this.outbox = outbox;
        this.kinds = kinds;
    }

    @Override
    public void appended(List<AppendedEvent> events) {
        List<Outbox.Told> told = new ArrayList<>();
        for (AppendedEvent event : events) {
            if (event.payload() instanceof BandEvent.BandFitted fitted) {
                told.add(new Outbox.Told(event.eventId(), told(fitted, kinds)));
            }
        }
        outbox.appendAll(told);
    }

    static BandFitted told(BandEvent.BandFitted fitted, DeviceKinds kinds) {
        Piece mesh = fitted.mesh();
        Fasteners fasteners = fitted.fasteners();
        return new BandFitted(
                fitted.bandId().value(),
                fitted.treeId().value(),
                fitted.siteId().value(),
                fitted.crewId().value(),
                fitted.personId().value(),
                fitted.girth().mm(),
                fitted.height().mm(),
                fitted.tape().reelId().value(),
                fitted.tape().length().mm(),
                mesh == null ? null : mesh.reelId().value(),
                mesh == null ? 0 : mesh.length().mm(),
                fasteners == null ? null : fasteners.batchId().value(),
                fasteners == null ? 0 : fasteners.pieces().count(),
                moves(fitted, kinds),
                fitted.when().happened(),
                fitted.when().recorded(),
                fitted.by().value(),
                fitted.details().device(),
                fitted.details().position());
    }

    private static List<MaterialMove> moves(BandEvent.BandFitted fitted, DeviceKinds kinds) {
        Piece mesh = fitted.mesh();
        Fasteners fasteners = fitted.fasteners();
        DeviceKind kind = kinds.named(fitted.details().device()).orElse(null);
        String crew = "crew:" + fitted.personId();
        String tree = "tree:" + fitted.treeId();
        List<MaterialMove> moves = new ArrayList<>();
        moves.add(reel(fitted.tape(), crew, tree, again(kind, DevicePart.Role.AROUND, true)));
        if (mesh != null) {
            moves.add(reel(mesh, crew, tree, again(kind, DevicePart.Role.GUARD, true)));
        }
        if (fasteners != null) {
            moves.add(batch(fasteners, crew, tree, again(kind, DevicePart.Role.PINS, false)));
        }
        Boolean cut = again(kind, DevicePart.Role.OTHER, true);
        Boolean counted = again(kind, DevicePart.Role.OTHER, false);
        fitted.details().alsoCut().forEach(piece -> moves.add(reel(piece, crew, tree, cut)));
        fitted.details().alsoCounted().forEach(used -> moves.add(batch(used, crew, tree, counted)));
        return moves;
    }

    /** Whether the parts in this role may be used again; null if the kind or such a part is not described. */
    private static @Nullable Boolean again(@Nullable DeviceKind kind, DevicePart.Role role, boolean cut) {
        if (kind == null) {
            return null;
        }
        List<DevicePart> parts = kind.parts().stream()
                .filter(part -> part.role() == role && part.material().onReels() == cut)
                .toList();
        return parts.isEmpty() ? null : (Boolean) parts.stream().allMatch(DevicePart::reusable);
    }

    private static MaterialMove batch(Fasteners used, String crew, String tree, @Nullable Boolean again) {
        return new MaterialMove(
                MaterialMove.BATCH, used.batchId().value(), used.pieces().count(), crew, tree, again);
    }

    private static MaterialMove reel(Piece piece, String crew, String tree, @Nullable Boolean again) {
        return new MaterialMove(
                MaterialMove.REEL, piece.reelId().value(), piece.length().mm(), crew, tree, again);
    }
}
