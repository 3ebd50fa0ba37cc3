/**
 * What inspections tells the other services: bands looked at, pieces renewed, bands taken down, bags taken away. Every
 * record is fat enough that a reader need not ask back, uses JDK types only, and carries its unit in the name. A change
 * is a new optional component with a new sample beside the old ones; anything else is a package v2.
 */
@NullMarked
package org.bandtrail.inspections.contract.v1;

import org.jspecify.annotations.NullMarked;
