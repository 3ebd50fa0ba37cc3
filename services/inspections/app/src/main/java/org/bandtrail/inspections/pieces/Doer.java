package org.bandtrail.inspections.pieces;

import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * Whose hands did something, and who told it.
 *
 * @param crew the crew, null if not written down
 * @param person who did it; material in this person's custody is what is used
 * @param by who is signed in and tells it, often the same person
 */
public record Doer(@Nullable CrewId crew, PersonId person, PersonId by) {}
