/**
 * The alarm for bands that stay on too long, as one plain sentence. It stands on the lead's home page, on the crew's
 * round, on trees and on sites, so that nobody has to open a list to learn of it. The figures are site-installs' own;
 * if it does not answer, the sentence says that, because a silent alarm would read as none.
 */
@NullMarked
package org.bandtrail.frontdesk.removals;

import org.jspecify.annotations.NullMarked;
