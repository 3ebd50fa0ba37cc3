package org.bandtrail.supplystock.causes;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Looks for one fact that was told twice: the same amount, the same place, minutes apart. */
final class DoubledFacts {
    private DoubledFacts() {}

    /** Taking one of the two away must close the gap. */
    static List<Cause> of(Case open, CausePolicy policy, Words words) {
        List<Cause> causes = new ArrayList<>();
        List<Custody.Touch> touches = open.touches();
        for (int i = 0; i < touches.size(); i++) {
            for (int j = i + 1; j < touches.size(); j++) {
                Custody.Touch one = touches.get(i);
                Custody.Touch two = touches.get(j);
                if (one.change() == two.change()
                        && one.outside().equals(two.outside())
                        && one.told().near(two.told(), policy.doubledWithin())
                        && policy.near(one.change(), open.gap())) {
                    causes.add(cause(one, two, words));
                }
            }
        }
        return causes;
    }

    private static Cause cause(Custody.Touch one, Custody.Touch two, Words words) {
        Duration apart =
                Duration.between(one.told().happened(), two.told().happened()).abs();
        return new Cause(
                CauseKind.DOUBLED_FACT,
                90,
                "%s was told twice %s on %s, %s apart; if it is one piece, the gap closes."
                        .formatted(
                                words.much(one.quantity()),
                                words.at(one.outside()),
                                words.day(one.told().happened()),
                                Words.time(apart)),
                null,
                one.outside(),
                one.quantity());
    }
}
