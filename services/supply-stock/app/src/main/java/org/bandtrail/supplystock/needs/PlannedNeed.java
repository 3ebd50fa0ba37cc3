package org.bandtrail.supplystock.needs;

import java.time.LocalDate;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;

/**
 * What one plan needs of one material.
 *
 * @param planId the plan, as its service names it
 * @param material the item
 * @param kind what it is
 * @param depot where it is to come from
 * @param day first day of the work
 * @param lastDay last day of the work
 * @param quantity millimetres without waste, or pieces; above zero
 * @param longestMm the longest piece in millimetres, 0 for fasteners
 */
public record PlannedNeed(
        String planId,
        MaterialCode material,
        MaterialKind kind,
        DepotId depot,
        LocalDate day,
        LocalDate lastDay,
        long quantity,
        long longestMm) {}
