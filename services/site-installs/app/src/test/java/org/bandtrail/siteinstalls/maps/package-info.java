/**
 * Tests of maps on a real database. Trees are given one by one while they are few and gathered when they are many. The
 * counts of a gathered map are those of the register.
 */
@NullMarked
package org.bandtrail.siteinstalls.maps;

import org.jspecify.annotations.NullMarked;
