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
