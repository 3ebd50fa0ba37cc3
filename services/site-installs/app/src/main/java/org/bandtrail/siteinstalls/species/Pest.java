package org.bandtrail.siteinstalls.species;

/**
 * An insect that is banded against.
 *
 * @param code of the EPPO list
 * @param name as people say
 * @param scientific name
 * @param codeSource where the code is from
 */
public record Pest(EppoCode code, String name, String scientific, String codeSource) {}
