package org.bandtrail.supplystock.causes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Looks for a length that, read in another unit, would close the gap. */
final class UnitMistakes {
    private UnitMistakes() {}

    /**
     * What was recorded as r is really t when t closes the gap: more must have left, or less. A factor between r and t
     * that belongs to two units speaks for them.
     */
    static List<Cause> of(Case open, CausePolicy policy, Words words) {
        List<Cause> causes = new ArrayList<>();
        for (Custody.Touch touch : open.touches()) {
            long written = touch.quantity();
            long truth = touch.change() < 0 ? written + open.gap() : written - open.gap();
            if (truth <= 0 || written == 0) {
                continue;
            }
            for (UnitSlip slip : UnitSlip.values()) {
                long away = slip.distance(written, truth, policy);
                if (away >= 0) {
                    causes.add(cause(open, touch, slip, truth, away, words));
                }
            }
        }
        return causes;
    }

    private static Cause cause(Case open, Custody.Touch touch, UnitSlip slip, long truth, long away, Words words) {
        String evidence = String.format(
                Locale.ROOT,
                "%s %s (%s) was written as %s; as %s, %s taken for each other (factor %s), the gap closes.",
                touch.told().what(),
                words.at(touch.outside()),
                words.day(touch.told().happened()),
                words.much(touch.quantity()),
                words.much(truth),
                slip.words(),
                slip.times());
        int weight = 80 - (int) Math.min(9, away);
        return new Cause(
                CauseKind.UNIT_MISTAKE, weight, Words.sentence(evidence), null, touch.outside(), Math.abs(open.gap()));
    }
}
