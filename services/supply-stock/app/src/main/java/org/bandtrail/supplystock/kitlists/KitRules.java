package org.bandtrail.supplystock.kitlists;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;

/** The published versions of the usual rule; the youngest that is valid on a day counts. */
public final class KitRules {
    private final List<Version> versions;

    /** These versions, in any order. */
    public KitRules(List<Version> versions) {
        this.versions = List.copyOf(versions);
    }

    /**
     * The version that counts on a day.
     *
     * @throws IllegalArgumentException naming the day if no version is that old
     */
    public Version on(LocalDate day) {
        return versions.stream()
                .filter(version -> !version.validFrom().isAfter(day))
                .max(Comparator.comparing(Version::validFrom).thenComparing(Version::version))
                .orElseThrow(() -> new IllegalArgumentException(
                        "No rule for kit lists is valid on [%s]. Give the figures with the list.".formatted(day)));
    }

    /**
     * One published version; lengths in millimetres.
     *
     * @param fastenerSpacingMm girth per fastener
     * @param reservedHours hours until a reservation lapses, if nobody says until when
     */
    public record Version(
            int version,
            LocalDate validFrom,
            String source,
            String reason,
            long overlapMm,
            long tabMm,
            long meshExtraMm,
            long fastenerSpacingMm,
            long fewestFasteners,
            int reservedHours) {

        /** The rule of this version. */
        public KitRule rule() {
            return new KitRule(
                    Length.ofMm(overlapMm),
                    Length.ofMm(tabMm),
                    Length.ofMm(meshExtraMm),
                    Length.ofMm(fastenerSpacingMm),
                    Pieces.of(fewestFasteners),
                    "%s, version %d".formatted(source, version));
        }
    }
}
