package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.kernel.MaterialCode;
import org.jspecify.annotations.Nullable;

/**
 * Which supply items a plan uses.
 *
 * @param tape of the bands
 * @param mesh of the guards, null if none is planned
 * @param fastener pins or tacks, null if none are planned
 */
public record PlanMaterials(
        MaterialCode tape,
        @Nullable MaterialCode mesh,
        @Nullable MaterialCode fastener) {}
