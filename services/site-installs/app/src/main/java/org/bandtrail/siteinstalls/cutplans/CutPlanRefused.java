package org.bandtrail.siteinstalls.cutplans;

import java.time.LocalDate;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.TreeId;

/** Why a wish about a cut plan is refused. */
public abstract sealed class CutPlanRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private CutPlanRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class AlreadyDrawn extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        AlreadyDrawn(CutPlanId planId) {
            super("Cut plan [%s] exists already. Give the new one another name.".formatted(planId));
        }

        @Override
        public String problem() {
            return "cut-plan-already-drawn";
        }
    }

    /** There is no such plan. */
    public static final class Unknown extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        Unknown(CutPlanId planId) {
            super("Cut plan [%s] does not exist. Draw it first.".formatted(planId));
        }

        @Override
        public int status() {
            return 404;
        }

        @Override
        public String problem() {
            return "cut-plan-unknown";
        }
    }

    /** A plan without trees or without material. */
    public static final class NothingToCut extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        NothingToCut(CutPlanId planId) {
            super("Cut plan [%s] has no tree or no material. Choose trees and the items of the device."
                    .formatted(planId));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "cut-plan-empty";
        }
    }

    /** The parts of a plan are not the whole. */
    public static final class DoesNotAddUp extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        DoesNotAddUp(CutPlanId planId, MaterialCode material, String wrong) {
            super("Cut plan [%s] is not kept: of %s, %s. Draw it again.".formatted(planId, material, wrong));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "cut-plan-does-not-add-up";
        }
    }

    /** The depot does not serve the whole list. */
    public static final class PiecesMissing extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        PiecesMissing(CutPlanId planId, int uncut) {
            super("Cut plan [%s] leaves %d pieces uncut. Buy what it names, or say that a part is wanted all the same."
                    .formatted(planId, uncut));
        }

        @Override
        public String problem() {
            return "cut-plan-pieces-missing";
        }
    }

    /** The plan stands where the wish does not fit. */
    public static final class StandsElsewhere extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        StandsElsewhere(CutPlanId planId, String wish, CutPlan.State state) {
            super("Cut plan [%s] cannot be %s, it is %s.".formatted(planId, wish, state.words()));
        }

        @Override
        public String problem() {
            return "cut-plan-stands-elsewhere";
        }
    }

    /** Dropping needs a reason. */
    public static final class NoReason extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        NoReason(CutPlanId planId, int longest) {
            super("Cut plan [%s] is dropped only with a reason of 1 to %d characters. Say why."
                    .formatted(planId, longest));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "cut-plan-no-reason";
        }
    }

    /** A tree nothing can be cut for. */
    public static final class TreeUnfit extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        TreeUnfit(TreeId treeId, String why) {
            super("Tree [%s] is not planned: %s.".formatted(treeId, why));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "cut-plan-tree-unfit";
        }
    }

    /** A depot without a reel of the material. */
    public static final class NoReels extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        NoReels(DepotId depot, MaterialCode material, LocalDate day) {
            super("Depot [%s] has no free reel of %s that is good on %s. Choose another item or depot, or order some."
                    .formatted(depot, material, day));
        }

        @Override
        public String problem() {
            return "cut-plan-no-reels";
        }
    }

    /** Reels of the plan are not there any more as they were. */
    public static final class ReelsTaken extends CutPlanRefused {
        private static final long serialVersionUID = 1L;

        ReelsTaken(CutPlanId planId, String reels) {
            super("Cut plan [%s] cannot be agreed: %s. Draw it again with what is there now.".formatted(planId, reels));
        }

        @Override
        public String problem() {
            return "cut-plan-reels-taken";
        }
    }
}
