package org.bandtrail.siteinstalls.workplans;

import org.bandtrail.kernel.MaterialCode;
import org.jspecify.annotations.Nullable;

/**
 * Which supply items a plan uses.
 *
 * @param tape what is cut from tape, null if the device has no part of tape
 * @param mesh what is cut from mesh, guards or the cloth or skirt of another device; null if nothing is
 * @param fastener pins or tacks, null if none are planned
 * @param other what is counted besides, such as ties or funnels; null if nothing is planned
 */
public record PlanMaterials(
        @Nullable MaterialCode tape,
        @Nullable MaterialCode mesh,
        @Nullable MaterialCode fastener,
        @Nullable MaterialCode other) {}
