package org.bandtrail.inspections.bands;

import java.util.EnumSet;
import java.util.Set;
import org.bandtrail.inspections.bands.BandCommand.RecordTeardown;
import org.bandtrail.inspections.bands.BandCommand.RecordVisit;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.kernel.Occurred;

/** What to point out about a fact that is accepted all the same. */
final class Remarks {
    private final Set<BandFlag> flags = EnumSet.noneOf(BandFlag.class);

    private Remarks() {}

    static Set<BandFlag> on(Band band, RecordVisit visit) {
        Remarks remarks = new Remarks();
        remarks.onTimes(band, visit.judging(), visit.occurred());
        remarks.add(
                BandFlag.CATCH_IS_LOWER_BOUND,
                visit.look().lowerBound(visit.judging().fullFromPercent()));
        remarks.add(BandFlag.CATCH_WITHOUT_READING, visit.look().contradictsItself());
        Replacement replacement = visit.replacement();
        remarks.add(
                BandFlag.BAG_NOT_NAMED,
                replacement != null && replacement.bagNotNamed(visit.doer().person()));
        return remarks.flags;
    }

    static Set<BandFlag> on(Band band, RecordTeardown teardown) {
        Remarks remarks = new Remarks();
        remarks.onTimes(band, teardown.judging(), teardown.occurred());
        remarks.add(BandFlag.BAG_NOT_NAMED, teardown.how().bag() == null);
        return remarks.flags;
    }

    private void onTimes(Band band, Judging judging, Occurred occurred) {
        add(BandFlag.BAND_NOT_KNOWN_YET, band.trunk() == null);
        add(BandFlag.RECORDED_LATE, occurred.delay().toHours() >= judging.lateAfterHours());
        add(BandFlag.CLOCK_AHEAD, occurred.delay().isNegative());
        for (PieceFact fact : band.pieces().facts()) {
            boolean before = fact.happened().isBefore(occurred.happened());
            add(BandFlag.BAND_ALREADY_DOWN, before && fact.kind() == PieceFact.Kind.TAKEN_DOWN);
            add(BandFlag.OUT_OF_ORDER, fact.happened().isAfter(occurred.happened()));
        }
    }

    private void add(BandFlag flag, boolean holds) {
        if (holds) {
            flags.add(flag);
        }
    }
}
