package org.bandtrail.siteinstalls.hazards;

/**
 * A kind of hazard.
 *
 * @param kind its key, for example {@code roadside}
 * @param name what people call it
 * @param caution what to do about it, short, for the screen of whoever goes there
 * @param source where the caution is from
 */
public record HazardKind(String kind, String name, String caution, String source) {}
