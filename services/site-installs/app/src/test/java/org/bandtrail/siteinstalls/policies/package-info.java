/**
 * Tests of the cut-length policy. Each refusal stands beside the wish that is allowed. The defaults are read as they
 * are shipped.
 */
@NullMarked
package org.bandtrail.siteinstalls.policies;

import org.jspecify.annotations.NullMarked;
