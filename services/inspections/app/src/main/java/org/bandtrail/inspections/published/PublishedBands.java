package org.bandtrail.inspections.published;

import java.util.List;
import java.util.TreeMap;
import org.bandtrail.inspections.bands.BandEvent;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.BandVisited;
import org.bandtrail.inspections.contract.v1.Bycatch;
import org.bandtrail.inspections.contract.v1.PiecesReplaced;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.MaterialKind;
import org.jspecify.annotations.Nullable;

/** Translates what happened to a band into the contract. */
final class PublishedBands {
    private PublishedBands() {}

    /** What others are told of an event; a fitting was theirs to tell, a bycatch outcome is nobody's concern. */
    static List<Object> of(BandEvent event) {
        return switch (event) {
            case BandEvent.FittingHeard _, BandEvent.BycatchClosed _ -> List.of();
            case BandEvent.Visited visited -> List.of(visited(visited));
            case BandEvent.PiecesReplaced replaced -> List.of(replaced(replaced));
            case BandEvent.TakenDown down ->
                List.of(takenDown(
                        down, down.teardown(), down.trunk(), down.how().bag(), false));
            case BandEvent.PlacesSettled settled -> List.of(settled(settled));
        };
    }

    private static BandVisited visited(BandEvent.Visited event) {
        Look look = event.look();
        TreeMap<String, Long> catches = new TreeMap<>();
        look.catches().forEach((stage, count) -> catches.put(stage.spelt(), count));
        Doer doer = event.doer();
        return new BandVisited(
                event.visit(),
                event.band().value(),
                tree(event.trunk()),
                site(event.trunk()),
                text(doer.crew()),
                doer.person().value(),
                look.answer().spelt(),
                look.saturationPercent(),
                event.lowerBound(),
                catches,
                bycatch(look.bycatch()),
                look.guard() == null ? null : look.guard().spelt(),
                event.occurred().happened(),
                event.occurred().recorded(),
                doer.by().value());
    }

    private static @Nullable Bycatch bycatch(org.bandtrail.inspections.sightings.@Nullable Bycatch seen) {
        return seen == null
                ? null
                : new Bycatch(
                        seen.seen(),
                        seen.foundAt(),
                        seen.animal(),
                        seen.alive(),
                        seen.action(),
                        seen.handedTo(),
                        seen.handedAt(),
                        seen.outcome(),
                        seen.photo(),
                        seen.supervisorTold());
    }

    private static PiecesReplaced replaced(BandEvent.PiecesReplaced event) {
        List<Portion> putUp = event.replacement().putUp();
        return replaced(
                event, event.visit(), event.trunk(), putUp, event.replacement().bag(), false);
    }

    private static PiecesReplaced replaced(
            BandEvent event,
            String visit,
            @Nullable Trunk trunk,
            List<Portion> putUp,
            @Nullable BagId bag,
            boolean settlesEarlier) {
        Portion tape = of(MaterialKind.TAPE, putUp);
        Portion mesh = of(MaterialKind.MESH, putUp);
        Portion fasteners = of(MaterialKind.FASTENER, putUp);
        return new PiecesReplaced(
                visit,
                event.band().value(),
                tree(trunk),
                site(trunk),
                text(event.doer().crew()),
                event.doer().person().value(),
                tape == null ? null : tape.id(),
                tape == null ? 0 : tape.quantity(),
                mesh == null ? null : mesh.id(),
                mesh == null ? 0 : mesh.quantity(),
                fasteners == null ? null : fasteners.id(),
                fasteners == null ? 0 : fasteners.quantity(),
                text(bag),
                settlesEarlier,
                PublishedMoves.of(event.moves()),
                event.occurred().happened(),
                event.occurred().recorded(),
                event.doer().by().value());
    }

    private static Object settled(BandEvent.PlacesSettled event) {
        return event.kind() == PieceFact.Kind.TAKEN_DOWN
                ? takenDown(event, event.fact(), event.trunk(), null, true)
                : replaced(event, event.fact(), event.trunk(), List.of(), null, true);
    }

    private static BandTakenDown takenDown(
            BandEvent event, String teardown, @Nullable Trunk trunk, @Nullable BagId bag, boolean settlesEarlier) {
        return new BandTakenDown(
                teardown,
                event.band().value(),
                tree(trunk),
                site(trunk),
                text(event.doer().crew()),
                event.doer().person().value(),
                text(bag),
                settlesEarlier,
                PublishedMoves.of(event.moves()),
                event.occurred().happened(),
                event.occurred().recorded(),
                event.doer().by().value());
    }

    private static @Nullable Portion of(MaterialKind kind, List<Portion> putUp) {
        return putUp.stream().filter(each -> each.kind() == kind).findFirst().orElse(null);
    }

    private static @Nullable String tree(@Nullable Trunk trunk) {
        return trunk == null ? null : trunk.tree().value();
    }

    private static @Nullable String site(@Nullable Trunk trunk) {
        return trunk == null ? null : trunk.site().value();
    }

    private static @Nullable String text(@Nullable Object identity) {
        return identity == null ? null : identity.toString();
    }
}
