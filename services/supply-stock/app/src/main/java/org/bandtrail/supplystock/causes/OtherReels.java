package org.bandtrail.supplystock.causes;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** Looks for another reel that is meant: its number one sign away, or mesh taken for tape. */
final class OtherReels {
    private final Case open;
    private final CausePolicy policy;
    private final Words words;

    OtherReels(Case open, CausePolicy policy, Words words) {
        this.open = open;
        this.policy = policy;
        this.words = words;
    }

    List<Cause> causes() {
        List<Cause> causes = new ArrayList<>();
        for (Suspect other : open.others()) {
            boolean oneApart = LabelSlip.oneApart(open.subject().id(), other.id());
            boolean samePerson = other.wasWith(open.custody());
            boolean otherKind = other.kind() != null
                    && open.subject().kind() != null
                    && !Objects.equals(other.kind(), open.subject().kind());
            Place opposite = other.disagreeingBy(-open.gap(), policy);
            if (otherKind && samePerson) {
                exchanged(other).ifPresent(causes::add);
            }
            if (opposite != null && otherKind && samePerson) {
                causes.add(opposite(other, CauseKind.SWAPPED_REEL, 96, "one is tape and the other mesh"));
            }
            if (opposite != null && oneApart) {
                causes.add(opposite(other, CauseKind.WRONG_LABEL, 95, "their numbers are one sign apart"));
            } else if (opposite != null && samePerson && !otherKind) {
                causes.add(opposite(other, CauseKind.WRONG_LABEL, 70, "the same person had both"));
            } else if (oneApart && samePerson) {
                onePiece(other).ifPresent(causes::add);
            }
        }
        return causes;
    }

    /** Two lengths told together at one tree: exchanged between the reels they would close the gap. */
    private Optional<Cause> exchanged(Suspect other) {
        for (Custody.Touch mine : open.touches()) {
            for (Custody.Touch theirs : open.touches(other)) {
                boolean together = mine.outside().equals(theirs.outside())
                        && mine.told().near(theirs.told(), policy.doubledWithin());
                if (together
                        && mine.change() < 0
                        && mine.change() != theirs.change()
                        && policy.near(mine.quantity() + open.gap(), theirs.quantity())) {
                    return Optional.of(new Cause(
                            CauseKind.SWAPPED_REEL,
                            97,
                            "%s of %s and %s of %s were told together %s; exchanged, they close the gap."
                                    .formatted(
                                            words.much(mine.quantity()),
                                            open.subject().id(),
                                            words.much(theirs.quantity()),
                                            other.id(),
                                            words.at(mine.outside())),
                            other.id(),
                            mine.outside(),
                            Math.abs(open.gap())));
                }
            }
        }
        return Optional.empty();
    }

    private Cause opposite(Suspect other, CauseKind kind, int weight, String why) {
        String much = words.much(Math.abs(open.gap()));
        String says = open.gap() > 0
                ? "%s has %s more recorded than it can have given, as much as is unexplained here; %s."
                : "%s has %s unexplained, as much as is recorded too much here; %s.";
        return new Cause(
                kind,
                weight,
                says.formatted(other.id(), much, why),
                other.id(),
                through(open.gap() > 0 ? other : open.subject()),
                Math.abs(open.gap()));
    }

    /** Where the piece is that was told of the wrong reel; null if no single fact has its length. */
    private @Nullable Place through(Suspect recorded) {
        return recorded.told().stream()
                .filter(told -> new Custody(told.source()).isPersons() && !new Custody(told.target()).isPersons())
                .filter(told -> policy.near(told.quantity(), Math.abs(open.gap())))
                .map(Told::target)
                .reduce((earlier, later) -> later)
                .orElse(null);
    }

    /** One fact of just this length on the reel that was taken for the other. */
    private Optional<Cause> onePiece(Suspect other) {
        boolean recordedThere = open.gap() > 0;
        return open.touches(recordedThere ? other : open.subject()).stream()
                .filter(touch -> touch.change() < 0 && policy.near(touch.quantity(), Math.abs(open.gap())))
                .findFirst()
                .map(touch -> new Cause(
                        CauseKind.WRONG_LABEL,
                        55,
                        "%s %s is recorded for %s; %s, one sign apart, was out with the same person."
                                .formatted(
                                        words.much(touch.quantity()),
                                        words.at(touch.outside()),
                                        recordedThere
                                                ? other.id()
                                                : open.subject().id(),
                                        recordedThere ? open.subject().id() : other.id()),
                        other.id(),
                        touch.outside(),
                        touch.quantity()));
    }
}
