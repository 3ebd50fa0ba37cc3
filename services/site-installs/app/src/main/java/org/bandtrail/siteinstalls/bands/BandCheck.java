package org.bandtrail.siteinstalls.bands;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.girths.GirthDoubt;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.policies.CutLengths;

/**
 * Compares a fitting with the books. The same findings are asked before a fact is stored and flagged on it afterwards,
 * so that a person sees in the field what the office will see. The pieces are
 * compared by {@link CutCheck}, their reels by {@link ReelCheck}.
 */
final class BandCheck {
    /** Clocks of telephones and servers differ by a few minutes without being wrong. */
    private static final Duration CLOCK_SLACK = Duration.ofMinutes(10);

    private final Fitting fitting;
    private final Books books;
    private final CutLengths policy;
    private final Length girth;
    private final List<Finding> findings = new ArrayList<>();

    private BandCheck(Fitting fitting, Books books) {
        this.fitting = fitting;
        this.books = books;
        this.policy = books.policy().values();
        this.girth = girthOf(fitting, books);
    }

    /** All findings, in the order of the form. */
    static List<Finding> findings(Fitting fitting, Books books, Occurred when) {
        BandCheck check = new BandCheck(fitting, books);
        check.identity();
        check.tree();
        check.girth();
        check.height();
        check.device();
        check.findings.addAll(CutCheck.findings(fitting, books, check.girth));
        check.findings.addAll(ReelCheck.findings(fitting, books));
        check.findings.addAll(MeshPieceCheck.findings(fitting, books));
        check.time(when);
        return List.copyOf(check.findings);
    }

    /** The findings a person can still answer before the fact is stored. */
    static List<Finding> questions(Fitting fitting, Books books, Occurred when) {
        Predicate<Finding> asked = finding -> List.of(BandFlag.values()).stream()
                .anyMatch(flag -> flag.code().equals(finding.code()) && flag.asked());
        return findings(fitting, books, when).stream().filter(asked).toList();
    }

    /**
     * The girth the band is kept with: as measured, else as registered, else what the piece of tape goes round by the
     * policy.
     */
    static Length girthOf(Fitting fitting, Books books) {
        if (fitting.girth() != null) {
            return fitting.girth().girth();
        }
        Length registered = books.registeredGirth();
        if (registered != null) {
            return registered;
        }
        CutLengths.TapeRule tape = books.policy().values().tape();
        Length fromTape =
                fitting.tape().length().minus(tape.overlap()).minus(tape.tab().times(2));
        return fromTape.max(Length.ofMm(1));
    }

    private void identity() {
        if (books.fittedBefore() != null) {
            add(
                    BandFlag.BAND_FITTED_BEFORE,
                    fitting.bandId(),
                    "Band %s was fitted before, at %s. Perhaps the number was used twice."
                            .formatted(fitting.bandId(), books.fittedBefore()));
        }
    }

    private void tree() {
        Books.RegisteredTree tree = books.tree();
        if (!books.siteKnown()) {
            add(BandFlag.SITE_UNKNOWN, fitting.siteId(), "Site %s is not registered.".formatted(fitting.siteId()));
        }
        if (tree == null) {
            add(BandFlag.TREE_UNKNOWN, fitting.treeId(), "Tree %s is not registered.".formatted(fitting.treeId()));
        } else if (!tree.siteId().equals(fitting.siteId())) {
            findings.add(Finding.of(
                    BandFlag.SITE_DIFFERS,
                    fitting.siteId(),
                    tree.siteId().value(),
                    "The register has tree %s at site %s.".formatted(fitting.treeId(), tree.siteId())));
        }
        if (tree != null && tree.mergedInto() != null) {
            add(
                    BandFlag.TREE_MERGED,
                    fitting.treeId(),
                    "Tree %s is the same trunk as %s; the band shows there."
                            .formatted(fitting.treeId(), tree.mergedInto()));
        }
        if (books.bandsUp().size() >= policy.setup().bandsPerTree()) {
            add(
                    BandFlag.TREE_ALREADY_BANDED,
                    fitting.treeId(),
                    "On tree %s hangs already: %s. A second band is fine if it is meant."
                            .formatted(fitting.treeId(), books.bandsUp()));
        }
    }

    private void girth() {
        WrittenGirth written = fitting.girth();
        if (written != null) {
            GirthDoubt.about(written, books.registeredGirth(), policy.girth()).ifPresent(this::doubt);
        } else if (books.registeredGirth() == null) {
            add(
                    BandFlag.GIRTH_MISSING,
                    fitting.treeId(),
                    "Nobody measured the girth of tree %s. By its tape it is about %s."
                            .formatted(fitting.treeId(), girth));
        }
    }

    private void doubt(GirthDoubt doubt) {
        BandFlag flag = switch (doubt.kind()) {
            case BELOW_MINIMUM -> BandFlag.GIRTH_BELOW_MINIMUM;
            case IMPLAUSIBLE -> BandFlag.GIRTH_IMPLAUSIBLE;
        };
        findings.add(Finding.of(flag, doubt.value(), doubt.perhaps(), doubt.message()));
    }

    private void height() {
        Length height = fitting.height();
        if (height != null && !policy.height().usualEnough(height)) {
            add(
                    BandFlag.HEIGHT_UNUSUAL,
                    height,
                    "The band hangs at %s; usual is %s to %s."
                            .formatted(
                                    height,
                                    policy.height().lowest(),
                                    policy.height().highest()));
        }
    }

    private void device() {
        String code = fitting.details().device();
        DeviceKind kind = books.device();
        if (kind == null) {
            add(BandFlag.DEVICE_UNKNOWN, code, "No kind of device %s is described here.".formatted(code));
        } else if (kind.question() != null && fitting.details().deviation() == null) {
            add(BandFlag.DEVICE_QUESTIONED, code, kind.question() + " A reason answers it.");
        }
    }

    private void time(Occurred when) {
        if (when.delay().compareTo(CLOCK_SLACK.negated()) < 0) {
            add(
                    BandFlag.CLOCK_AHEAD,
                    when.happened(),
                    "Fitted at %s, which is yet to come. Check the clock of the device.".formatted(when.happened()));
        } else if (when.delay().compareTo(Duration.ofDays(policy.lateAfterDays())) > 0) {
            add(
                    BandFlag.RECORDED_LATE,
                    when.happened(),
                    "Written down %d days after it was done."
                            .formatted(when.delay().toDays()));
        }
    }

    private void add(BandFlag flag, Object value, String message) {
        findings.add(Finding.of(flag, value, message));
    }
}
