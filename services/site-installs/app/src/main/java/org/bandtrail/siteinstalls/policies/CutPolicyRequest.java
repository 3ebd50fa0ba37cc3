package org.bandtrail.siteinstalls.policies;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.siteinstalls.girths.GirthLimits;
import org.jspecify.annotations.Nullable;

/**
 * A version of the policy as people send it.
 *
 * @param commandId made by the client, UUIDv7
 * @param validFrom first day on which bands are cut by it
 * @param validUntil last such day; left out for no end
 * @param programme for which it holds; left out for all
 * @param pest EPPO code for which it holds; left out for all
 * @param source where the values come from
 * @param reason why they are chosen
 * @param values the values
 */
record CutPolicyRequest(
        @NotNull UUID commandId,
        @NotNull LocalDate validFrom,
        @Nullable LocalDate validUntil,
        @Nullable String programme,
        @Nullable String pest,
        @NotNull String source,
        @NotNull String reason,
        @NotNull @Valid Values values) {

    PolicyScope scope() {
        return new PolicyScope(programme, pest);
    }

    /** The values as people write them; see {@link CutLengths} for meaning and range. */
    record Values(
            @NotNull Length tapeOverlap,
            @NotNull Length tapeTab,
            @NotNull Length tapeWidest,
            @NotNull Length meshExtra,
            @NotNull Length meshLeastStandOff,
            @NotNull Length meshWidestOpening,
            @NotNull Length fastenerSpacing,
            int fastenerMinimum,
            @NotNull Length heightUsual,
            @NotNull Length heightLowest,
            @NotNull Length heightHighest,
            @NotNull Length girthMinimum,
            @NotNull Length girthQuestionAbove,
            int girthChangePermille,
            int removeAfterDays,
            int lateAfterDays,
            @Nullable Integer bandsPerTree,
            @Nullable Length bandWidth,
            @Nullable String guardType,
            @Nullable Length guardWider,
            @Nullable Length guardSeam,
            @Nullable Boolean guardClosedBelow) {

        /** The values; what is left out of the setup is as before. */
        CutLengths cutLengths(CutLengths.SetupRule before) {
            return new CutLengths(
                    new CutLengths.TapeRule(tapeOverlap, tapeTab, tapeWidest),
                    new CutLengths.MeshRule(meshExtra, meshLeastStandOff, meshWidestOpening),
                    new CutLengths.FastenerRule(fastenerSpacing, Pieces.of(fastenerMinimum)),
                    new CutLengths.HeightRule(heightUsual, heightLowest, heightHighest),
                    new GirthLimits(girthMinimum, girthQuestionAbove, girthChangePermille),
                    setup(before),
                    removeAfterDays,
                    lateAfterDays);
        }

        private CutLengths.SetupRule setup(CutLengths.SetupRule before) {
            return new CutLengths.SetupRule(
                    Objects.requireNonNullElse(bandsPerTree, before.bandsPerTree()),
                    Objects.requireNonNullElse(bandWidth, before.bandWidth()),
                    guardType == null ? before.guard() : CutLengths.GuardType.of(guardType),
                    Objects.requireNonNullElse(guardWider, before.guardWider()),
                    Objects.requireNonNullElse(guardSeam, before.seam()),
                    Objects.requireNonNullElse(guardClosedBelow, before.closedBelow()));
        }
    }
}
