package org.bandtrail.siteinstalls.guards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bandtrail.kernel.Length;

/**
 * What is wrong with a guard, in plain words.
 *
 * @param kind in what way
 * @param message one or two sentences with the figure and what is asked for
 */
public record GuardDoubt(Kind kind, String message) {
    /** In what way. */
    public enum Kind {
        /** It is closed so tightly that it touches the tape or does not close at all. */
        TOUCHES,
        /** It stands nearer than asked. */
        TOO_CLOSE,
        /** Its mesh opens wider than asked. */
        OPENING,
        /** It does not cover the tape far enough. */
        NARROW,
        /** It is open below. */
        OPEN_BELOW
    }

    /** Everything that is wrong with this sheet by this rule, in the order in which a crew looks at it. */
    public static List<GuardDoubt> about(GuardSheet sheet, GuardRule rule, Openings openings) {
        List<GuardDoubt> doubts = new ArrayList<>();
        Length standOff = sheet.standOff();
        Length least = rule.leastStandOff();
        if (!standOff.isPositive()) {
            doubts.add(new GuardDoubt(
                    Kind.TOUCHES,
                    "The guard would touch the tape: %d mm of mesh close round %d mm with nothing to spare. "
                                    .formatted(
                                            sheet.length().mm() - sheet.seam().mm(),
                                            sheet.girth().mm())
                            + "%d mm stand off %d mm."
                                    .formatted(sheet.lengthFor(least).mm(), least.mm())));
        } else if (standOff.compareTo(least) < 0) {
            doubts.add(new GuardDoubt(
                    Kind.TOO_CLOSE,
                    "The guard would come too close to the tape: it stands off %d mm, the policy asks %d mm. "
                                    .formatted(standOff.mm(), least.mm())
                            + "That takes %d mm of mesh."
                                    .formatted(sheet.lengthFor(least).mm())));
        }
        opening(sheet, rule, openings).ifPresent(doubts::add);
        Length wider = sheet.wider();
        if (wider != null && wider.compareTo(rule.wider()) < 0) {
            doubts.add(new GuardDoubt(
                    Kind.NARROW,
                    "The guard is %d mm wider than the tape; the policy asks %d mm, so that it covers the tape."
                            .formatted(wider.mm(), rule.wider().mm())));
        }
        if (rule.closedBelow() && Boolean.FALSE.equals(sheet.closedBelow())) {
            doubts.add(new GuardDoubt(
                    Kind.OPEN_BELOW,
                    "The guard is open below. Bend its edge in to the bark, so that nothing climbs in under it."));
        }
        return List.copyOf(doubts);
    }

    private static Optional<GuardDoubt> opening(GuardSheet sheet, GuardRule rule, Openings openings) {
        Length opening = sheet.opening();
        if (opening == null || opening.compareTo(rule.widestOpening()) <= 0) {
            return Optional.empty();
        }
        String who = openings.largestThrough(opening)
                .map(through ->
                        " %s gets through openings over %d mm.".formatted(capital(through.animal()), through.overMm()))
                .orElse("");
        return Optional.of(new GuardDoubt(
                Kind.OPENING,
                "The mesh opens %d mm; the policy asks %d mm or less.%s"
                        .formatted(opening.mm(), rule.widestOpening().mm(), who)));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
