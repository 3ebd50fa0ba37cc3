package org.bandtrail.siteinstalls.hostchecks;

/**
 * What somebody answered.
 *
 * @param question id of the question
 * @param answer id of the answer, or {@link HostQuestion#NOT_SURE}
 */
public record HostAnswer(String question, String answer) {}
