package org.bandtrail.siteinstalls.trees;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.TreeId;

/** Why a wish about a tree is refused. */
public abstract sealed class TreeRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private TreeRefused(String message) {
        super(message);
    }

    /** The identity is taken, which mostly means that the tag was entered before. */
    public static final class AlreadyRegistered extends TreeRefused {
        private static final long serialVersionUID = 1L;

        AlreadyRegistered(TreeId treeId) {
            super("Tree [%s] is registered already. Measure it there, or check the tag and the site."
                    .formatted(treeId));
        }

        @Override
        public String problem() {
            return "tree-already-registered";
        }
    }

    /** There is no such tree. */
    public static final class NotRegistered extends TreeRefused {
        private static final long serialVersionUID = 1L;

        NotRegistered(TreeId treeId) {
            super("Tree [%s] is not in the register. Register it first.".formatted(treeId));
        }

        @Override
        public String problem() {
            return "tree-not-registered";
        }
    }

    /** The tag is missing or too long to be on a tag. */
    public static final class TagUnusable extends TreeRefused {
        private static final long serialVersionUID = 1L;

        TagUnusable(String tag, int longest) {
            super("Tag [%s] cannot be used. Give the 1 to %d characters that are on the tag.".formatted(tag, longest));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "tree-tag-unusable";
        }
    }

    /** A correction that changes nothing, or does not say why. */
    public static final class NothingCorrected extends TreeRefused {
        private static final long serialVersionUID = 1L;

        NothingCorrected(TreeId treeId, String why) {
            super("Tree [%s] is not corrected: %s".formatted(treeId, why));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "tree-nothing-corrected";
        }
    }

    /** A tree that cannot be merged, or whose merge cannot be taken back. */
    public static final class NotMerged extends TreeRefused {
        private static final long serialVersionUID = 1L;

        /**
         * With the reason.
         *
         * @param treeId the tree that was to be merged or to stand for itself again
         * @param why why not and what to do, whole sentences
         */
        public NotMerged(TreeId treeId, String why) {
            super("Tree [%s] stays as it is. %s".formatted(treeId, why));
        }

        @Override
        public String problem() {
            return "tree-not-merged";
        }
    }

    /** A tree that nobody said was gone cannot be found again. */
    public static final class NotGone extends TreeRefused {
        private static final long serialVersionUID = 1L;

        NotGone(TreeId treeId) {
            super("Tree [%s] stands, the books say. There is nothing to take back.".formatted(treeId));
        }

        @Override
        public String problem() {
            return "tree-not-gone";
        }
    }
}
