package org.bandtrail.siteinstalls.cutplans;

import java.util.List;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.AgreePlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DrawPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.DropPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanCommand.HandOverPlan;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Agreed;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Drawn;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.Dropped;
import org.bandtrail.siteinstalls.cutplans.CutPlanEvent.HandedOver;
import org.jspecify.annotations.Nullable;

/**
 * One cut plan.
 *
 * @param planId null before it is drawn
 * @param state where it stands
 * @param uncut how many pieces it cannot cut
 */
public record CutPlan(@Nullable CutPlanId planId, State state, int uncut) {
    /** Before it is drawn. */
    public static final CutPlan NONE = new CutPlan(null, State.DRAWN, 0);

    private static final int LONGEST_REASON = 500;

    /** Where a plan stands. */
    public enum State {
        /** Worked out; binds nothing. */
        DRAWN,
        /** Its reels are bound. */
        AGREED,
        /** Its pieces went out with a kit. */
        HANDED_OVER,
        /** It is not cut. */
        DROPPED;

        /** In words. */
        String words() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * Decides a command.
     *
     * @throws CutPlanRefused if the identity is taken, the plan does not add up, is unknown, or stands elsewhere
     */
    public List<CutPlanEvent> decide(CutPlanCommand command) {
        return switch (command) {
            case DrawPlan draw -> List.of(drawn(draw));
            case AgreePlan agree -> List.of(agreed(agree));
            case DropPlan drop -> List.of(dropped(drop));
            case HandOverPlan handOver -> List.of(handedOver(handOver));
        };
    }

    private Drawn drawn(DrawPlan draw) {
        if (planId != null) {
            throw new CutPlanRefused.AlreadyDrawn(planId);
        }
        if (draw.trees().isEmpty() || draw.materials().isEmpty()) {
            throw new CutPlanRefused.NothingToCut(draw.planId());
        }
        for (MaterialCuts cuts : draw.materials()) {
            String wrong = cuts.wrong();
            if (!wrong.isEmpty()) {
                throw new CutPlanRefused.DoesNotAddUp(draw.planId(), cuts.material(), wrong);
            }
        }
        return new Drawn(
                draw.planId(),
                draw.depot(),
                draw.day(),
                draw.measure(),
                draw.use(),
                draw.policyVersion(),
                draw.trees(),
                draw.materials(),
                draw.by(),
                draw.when());
    }

    private Agreed agreed(AgreePlan agree) {
        mustStand(agree.planId(), "agreed", State.DRAWN);
        if (uncut > 0 && !agree.partly()) {
            throw new CutPlanRefused.PiecesMissing(agree.planId(), uncut);
        }
        return new Agreed(agree.planId(), agree.partly(), agree.by(), agree.when());
    }

    private Dropped dropped(DropPlan drop) {
        mustStand(drop.planId(), "dropped", State.DRAWN, State.AGREED);
        String reason = drop.reason().strip();
        if (reason.isEmpty() || reason.length() > LONGEST_REASON) {
            throw new CutPlanRefused.NoReason(drop.planId(), LONGEST_REASON);
        }
        return new Dropped(drop.planId(), reason, drop.by(), drop.when());
    }

    private HandedOver handedOver(HandOverPlan handOver) {
        mustStand(handOver.planId(), "handed over", State.AGREED);
        return new HandedOver(handOver.planId(), handOver.kitId(), handOver.by(), handOver.when());
    }

    private void mustStand(CutPlanId asked, String wish, State... fit) {
        if (planId == null) {
            throw new CutPlanRefused.Unknown(asked);
        }
        if (!List.of(fit).contains(state)) {
            throw new CutPlanRefused.StandsElsewhere(asked, wish, state);
        }
    }

    /** The plan after the event; an event that cannot follow is a damaged history and throws. */
    public CutPlan evolve(CutPlanEvent event) {
        if ((planId == null) != (event instanceof Drawn)) {
            throw new IllegalStateException("Cut plan %s cannot have [%s] now.".formatted(event.planId(), event));
        }
        return switch (event) {
            case Drawn drawn ->
                new CutPlan(
                        drawn.planId(),
                        State.DRAWN,
                        drawn.materials().stream()
                                .mapToInt(cuts ->
                                        cuts.uncut().size() + cuts.tooLong().size())
                                .sum());
            case Agreed agreed -> new CutPlan(planId, State.AGREED, uncut);
            case Dropped dropped -> new CutPlan(planId, State.DROPPED, uncut);
            case HandedOver over -> new CutPlan(planId, State.HANDED_OVER, uncut);
        };
    }
}
