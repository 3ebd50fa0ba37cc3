package org.bandtrail.frontdesk.neighbours;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page of a list.
 *
 * @param next where the next page begins, or null on the last page
 */
public record Rows<T>(List<T> rows, @Nullable String next) {}
