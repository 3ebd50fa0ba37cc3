package org.bandtrail.siteinstalls.devices;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.cutting.FastenerCount;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.policies.CutLengths;

/**
 * The pieces of one device for one trunk.
 *
 * <p>A length is L = f g + x, rounded up to the crew's tape: g girth, f the factor of the part (1.5 for window screen,
 * a published figure; 1 otherwise), x the lengths of the policy and of the part; all in millimetres. Pins are counted
 * as {@link FastenerCount} says. Valid for g above 0.
 *
 * @param kind the device
 * @param pieces one for each of its parts, in their order
 */
public record PieceList(DeviceKind kind, List<NeededPiece> pieces) {
    /** Keeps its own copy. */
    public PieceList {
        pieces = List.copyOf(pieces);
    }

    /**
     * Calculates the list.
     *
     * @throws IllegalArgumentException if the girth is not above zero
     */
    public static PieceList of(DeviceKind kind, Length girth, CutLengths policy, TapeMeasure measure) {
        if (!girth.isPositive()) {
            throw new IllegalArgumentException("The girth [%s] must be more than zero.".formatted(girth));
        }
        return new PieceList(
                kind,
                kind.parts().stream()
                        .map(part -> switch (part.rule()) {
                            case PieceRule.ByGirth rule -> cut(part, rule, girth, policy, measure);
                            case PieceRule.Fixed rule ->
                                new NeededPiece(part, null, Pieces.of(rule.pieces()), "always " + rule.pieces());
                            case PieceRule.ByPins rule -> pins(part, girth, policy);
                        })
                        .toList());
    }

    /** What is needed in this role, empty if the device has no such part; of several the first. */
    public Optional<NeededPiece> in(DevicePart.Role role) {
        return pieces.stream().filter(piece -> piece.part().role() == role).findFirst();
    }

    /** The length of the piece that is cut from this kind of material, zero if none is. */
    public Length cutFrom(MaterialKind material) {
        return pieces.stream()
                .filter(piece -> piece.part().material() == material)
                .map(NeededPiece::length)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(Length.ZERO);
    }

    /** Pins of one device, none if it has no pins. */
    public Pieces pins() {
        return counted(true);
    }

    /** Counted pieces of one device besides its pins. */
    public Pieces others() {
        return counted(false);
    }

    private Pieces counted(boolean pins) {
        return Pieces.of(pieces.stream()
                .filter(piece -> pins == (piece.part().role() == DevicePart.Role.PINS))
                .map(NeededPiece::pieces)
                .filter(Objects::nonNull)
                .mapToLong(Pieces::count)
                .sum());
    }

    private static NeededPiece cut(
            DevicePart part, PieceRule.ByGirth rule, Length girth, CutLengths policy, TapeMeasure measure) {
        StringBuilder formula = new StringBuilder("girth %d".formatted(girth.mm()));
        if (rule.timesPermille() != 1000) {
            formula.append(" x %s"
                    .formatted(java.math.BigDecimal.valueOf(rule.timesPermille(), 3)
                            .stripTrailingZeros()
                            .toPlainString()));
        }
        // Rounded up before the step of the tape, so that no half millimetre is lost.
        long length = Math.ceilDiv(girth.mm() * rule.timesPermille(), 1000);
        for (FromPolicy extra : rule.plus()) {
            length += extra.of(policy).mm();
            formula.append(" + %s %d".formatted(extra.words(), extra.of(policy).mm()));
        }
        if (rule.plusMm() > 0) {
            length += rule.plusMm();
            formula.append(" + %d".formatted(rule.plusMm()));
        }
        Length rounded = measure.roundUp(Length.ofMm(length));
        formula.append(" = %d, rounded up to %d mm".formatted(length, rounded.mm()));
        return new NeededPiece(part, rounded, null, formula.toString());
    }

    private static NeededPiece pins(DevicePart part, Length girth, CutLengths policy) {
        CutLengths.FastenerRule rule = policy.fasteners();
        Pieces pieces = FastenerCount.of(girth, rule.spacing(), rule.minimum());
        return new NeededPiece(
                part,
                null,
                pieces,
                "one per started %d mm, at least %d: %d"
                        .formatted(rule.spacing().mm(), rule.minimum().count(), pieces.count()));
    }
}
