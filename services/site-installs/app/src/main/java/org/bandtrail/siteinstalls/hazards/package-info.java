/**
 * Hazards of a site: what can hurt somebody there, with a caution in words for whoever goes. The kinds are data with
 * source and reason in {@code defaults/hazards.json}; adding one is a line there. Local codes, permits and licensed
 * people come first, and the cautions say so where somebody could be hurt.
 */
@NullMarked
package org.bandtrail.siteinstalls.hazards;

import org.jspecify.annotations.NullMarked;
