package org.bandtrail.supplystock.custody;

import java.time.Instant;
import java.util.List;

/** Who was in a crew from a moment on. */
record CrewMembers(String crew, long position, List<String> people, Instant happened, Instant recorded) {}
