/**
 * Tests of what is told. The contract record is compared field by field with the private event it follows from. Moves
 * must add up to the material.
 */
@NullMarked
package org.bandtrail.siteinstalls.published;

import org.jspecify.annotations.NullMarked;
