package org.bandtrail.siteinstalls.policies;

import java.time.LocalDate;
import org.bandtrail.eventstore.Refusal;

/** Why a new version of the cut-length policy is refused. */
public abstract sealed class CutPolicyRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private CutPolicyRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** Nobody could check the values later. */
    public static final class SourceMissing extends CutPolicyRefused {
        private static final long serialVersionUID = 1L;

        SourceMissing(LocalDate validFrom) {
            super("The version from %s names no source. Say where its values come from, or that they are house rules."
                    .formatted(validFrom));
        }

        @Override
        public String problem() {
            return "policy-source-missing";
        }
    }

    /** No day lies between its first and its last. */
    public static final class EndsBeforeItBegins extends CutPolicyRefused {
        private static final long serialVersionUID = 1L;

        EndsBeforeItBegins(LocalDate validFrom, LocalDate validUntil) {
            super("The version from %s would end on %s, before it begins. Leave the end out, or give a later day."
                    .formatted(validFrom, validUntil));
        }

        @Override
        public String problem() {
            return "policy-ends-before-it-begins";
        }
    }

    /** A programme decides for a pest; without one the version would never be looked up. */
    public static final class PestMissing extends CutPolicyRefused {
        private static final long serialVersionUID = 1L;

        PestMissing(String programme) {
            super("The version for programme %s names no pest. Say for which pest it holds.".formatted(programme));
        }

        @Override
        public String problem() {
            return "policy-pest-missing";
        }
    }

    /** There is no such version to compare with or to begin from. */
    public static final class NoSuchVersion extends CutPolicyRefused {
        private static final long serialVersionUID = 1L;

        NoSuchVersion(int version) {
            super("There is no version %d of the policy. Choose one of the list.".formatted(version));
        }

        @Override
        public int status() {
            return 404;
        }

        @Override
        public String problem() {
            return "policy-version-unknown";
        }
    }

    /** Nobody would know later why the values changed. */
    public static final class ReasonMissing extends CutPolicyRefused {
        private static final long serialVersionUID = 1L;

        ReasonMissing(LocalDate validFrom) {
            super("The version from %s gives no reason. Say why these values are chosen.".formatted(validFrom));
        }

        @Override
        public String problem() {
            return "policy-reason-missing";
        }
    }
}
