/**
 * Pages about sites and trees, and the way a tree list comes in: choose a file, say which column is what, look at every
 * problem by row and column, and only then store. A tree's page shows its girths over time, its bands and what the
 * books say is on it. Reading and checking the file is the work of site-installs.
 */
@NullMarked
package org.bandtrail.frontdesk.trees;

import org.jspecify.annotations.NullMarked;
