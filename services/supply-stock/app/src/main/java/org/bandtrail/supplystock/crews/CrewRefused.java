package org.bandtrail.supplystock.crews;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.CrewId;

/** Why a wish about a crew is refused. */
public abstract sealed class CrewRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private CrewRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class CrewFormedAlready extends CrewRefused {
        private static final long serialVersionUID = 1L;

        CrewFormedAlready(CrewId crew, String name) {
            super("Crew [%s] exists already as %s. Choose another identity.".formatted(crew, name));
        }
    }

    /** Nobody has formed the crew. */
    public static final class CrewUnknown extends CrewRefused {
        private static final long serialVersionUID = 1L;

        CrewUnknown(CrewId crew) {
            super("Crew [%s] does not exist. Form it first, or check the identity.".formatted(crew));
        }
    }

    /** A crew needs people. */
    public static final class CrewWithoutPeople extends CrewRefused {
        private static final long serialVersionUID = 1L;

        CrewWithoutPeople(CrewId crew) {
            super("Crew [%s] needs a name and at least one person, because custody is a person's.".formatted(crew));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
