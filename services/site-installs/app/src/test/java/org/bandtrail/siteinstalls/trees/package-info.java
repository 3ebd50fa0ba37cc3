/**
 * Tests of trees. Each refusal stands beside the wish that is allowed. Measurements are tested in every order they may
 * come in.
 */
@NullMarked
package org.bandtrail.siteinstalls.trees;

import org.jspecify.annotations.NullMarked;
