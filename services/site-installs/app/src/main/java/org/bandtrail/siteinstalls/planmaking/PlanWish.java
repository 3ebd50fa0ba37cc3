package org.bandtrail.siteinstalls.planmaking;

import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.cutting.TapeMeasure;
import org.bandtrail.siteinstalls.workplans.PlanMaterials;
import org.jspecify.annotations.Nullable;

/**
 * A plan as people ask for it.
 *
 * @param day first day
 * @param lastDay last day, null for one day
 * @param tape the item of what is cut from tape, null if the device has no such part
 * @param mesh the item of what is cut from mesh, null if the device has no such part or no guard is planned
 * @param fastener pins, null if none are planned
 * @param pest EPPO code, null if not said
 * @param measure metric rounds pieces up to 5 mm, imperial to 1/8 in; null is metric
 * @param putUpFrom first day on which bands make sense, null if not said
 * @param putUpUntil last such day, null if not said
 * @param order listed keeps the order of the trees, shortest suggests a short walk from the first one; null is listed
 * @param programme code of the programme, null if not said
 * @param device code of the kind of device, null for the usual one of the policy
 * @param other the item of what is counted besides pins, null if none is planned
 * @param trees what to do, in order
 * @param note for the crew, null for none
 */
record PlanWish(
        @NotNull LocalDate day,
        @Nullable LocalDate lastDay,
        @NotNull CrewId crewId,
        @NotNull DepotId depotId,
        @Nullable MaterialCode tape,
        @Nullable MaterialCode mesh,
        @Nullable MaterialCode fastener,
        @Nullable String pest,
        @Nullable String measure,
        @Nullable LocalDate putUpFrom,
        @Nullable LocalDate putUpUntil,
        @Nullable String order,
        @Nullable String programme,
        @Nullable String device,
        @Nullable MaterialCode other,
        @NotNull List<Line> trees,
        @Nullable String note) {

    /**
     * One tree.
     *
     * @param bands how many, null for one
     */
    record Line(@NotNull TreeId treeId, @Nullable Integer bands) {
        private static final int MOST_BANDS = 9;

        /** How many bands go on it. */
        int count() {
            int count = bands == null ? 1 : bands;
            if (count < 1 || count > MOST_BANDS) {
                throw new IllegalArgumentException(
                        "Tree [%s] cannot have [%d] bands. Use 1 to %d.".formatted(treeId, count, MOST_BANDS));
            }
            return count;
        }
    }

    LocalDate until() {
        return Objects.requireNonNullElse(lastDay, day);
    }

    PlanMaterials materials() {
        return new PlanMaterials(tape, mesh, fastener, other);
    }

    TapeMeasure steps() {
        return switch (Objects.requireNonNullElse(measure, "metric")) {
            case "metric" -> TapeMeasure.METRIC;
            case "imperial" -> TapeMeasure.IMPERIAL;
            default ->
                throw new IllegalArgumentException("measure [%s] is neither metric nor imperial.".formatted(measure));
        };
    }

    boolean shortest() {
        return switch (Objects.requireNonNullElse(order, "listed")) {
            case "listed" -> false;
            case "shortest" -> true;
            default ->
                throw new IllegalArgumentException("order [%s] is neither listed nor shortest.".formatted(order));
        };
    }
}
