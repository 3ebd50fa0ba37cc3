package org.bandtrail.supplystock.received;

import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.BandVisited;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.supplystock.bandwork.BandWork;
import org.springframework.stereotype.Component;

/** Puts down what a field service told about a band itself, beside the moves of its material. */
@Component
class BandFacts {
    private static final String READ = "read";
    private final BandWork work;

    BandFacts(BandWork work) {
        this.work = work;
    }

    /** A band begins to hang. */
    void hear(BandFitted fitted) {
        work.fitted(new BandWork.Fitted(
                fitted.bandId(),
                fitted.treeId(),
                fitted.siteId(),
                fitted.crewId(),
                fitted.personId(),
                fitted.happenedAt()));
    }

    /** A band hangs no more; a message that only settles moves of an earlier one says nothing new about it. */
    void hear(BandTakenDown down) {
        if (!down.settlesEarlier()) {
            work.takenDown(down.bandId(), down.happenedAt());
        }
    }

    /** A band was looked at; only a visit that was read counts insects, the other answers are no zero. */
    void hear(BandVisited visited) {
        if (visited.answer().equals(READ)) {
            work.counted(
                    visited.visitId(),
                    visited.bandId(),
                    visited.siteId(),
                    visited.happenedAt(),
                    visited.catches(),
                    visited.catchIsLowerBound());
        }
    }
}
