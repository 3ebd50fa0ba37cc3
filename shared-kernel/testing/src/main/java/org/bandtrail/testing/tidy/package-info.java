/**
 * Rules over the sources of the whole repository, for what byte code does not show: sizes of files, lines, methods and
 * packages, words left behind, links and the map of the README, names of tests, texts of packages, numbers of
 * migrations. They run once, as {@code TidyTest} of this module, over everything that is checked in. What is not tidy
 * yet stands in a list of exceptions with its size and the reason; a line that excuses nothing any more is a complaint
 * itself, so the list only gets shorter.
 */
@NullMarked
package org.bandtrail.testing.tidy;

import org.jspecify.annotations.NullMarked;
