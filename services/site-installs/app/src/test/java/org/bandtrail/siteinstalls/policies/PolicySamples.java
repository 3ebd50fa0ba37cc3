package org.bandtrail.siteinstalls.policies;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.bandtrail.siteinstalls.policies.CutPolicyCommand.PublishCutLengths;

/** Values for tests. */
public final class PolicySamples {
    public static final CutLengths USUAL = new CutLengths(
            new CutLengths.TapeRule(Length.ofMm(50), Length.ofMm(19), Length.ofMm(127)),
            new CutLengths.MeshRule(Length.ofMm(229), Length.ofMm(25), Length.ofMm(13)),
            new CutLengths.FastenerRule(Length.ofMm(150), Pieces.of(4)),
            new CutLengths.HeightRule(Length.ofMm(1200), Length.ofMm(900), Length.ofMm(1500)),
            new GirthLimits(Length.ofMm(479), Length.ofMm(6000), 250),
            new CutLengths.SetupRule(1, Length.ofMm(127), CutLengths.GuardType.MESH, Length.ofMm(1), Length.ZERO, true),
            150,
            2);
    public static final CutPolicyVersion VERSION_1 =
            new CutPolicyVersion(1, LocalDate.parse("2026-01-01"), USUAL, "test", "test");

    private PolicySamples() {}

    public static PublishCutLengths publish(String validFrom, String source, String reason) {
        return new PublishCutLengths(
                CutPolicy.ID,
                USUAL,
                PolicyScope.HOUSE,
                LocalDate.parse(validFrom),
                null,
                source,
                reason,
                new PersonId("P-01"),
                Occurred.at(Instant.parse("2026-02-01T08:00:00Z")));
    }
}
