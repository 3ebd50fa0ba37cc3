/**
 * Species: what the house knows about trees and the pests they host. A tree carries the text people wrote and, where it
 * is known, an EPPO code beside it; the code is what data hangs on and the text is never thrown away. Pure data and
 * values, no events: what a species is does not happen. The book comes with the house as one version of data, each
 * code and each girth with where it is from; what is from memory says so.
 */
@NullMarked
package org.bandtrail.siteinstalls.species;

import org.jspecify.annotations.NullMarked;
