/**
 * Trees: the register of trunks, each with its tag, its site, perhaps its species, and every girth ever measured with
 * its date. {@code RegisterTree} is refused when the identity is taken; {@code MeasureGirth} when the tree is not
 * registered. A measurement is never overwritten: the one that happened last is the girth, whatever order they came
 * in. Two tags on one trunk and two trees with one tag at a site are what a register must not have, so tag and site
 * make the identity unless one is given.
 */
@NullMarked
package org.bandtrail.siteinstalls.trees;

import org.jspecify.annotations.NullMarked;
