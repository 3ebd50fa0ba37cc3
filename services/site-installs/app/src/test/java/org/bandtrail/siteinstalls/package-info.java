/**
 * Tests of the service as a whole: it starts with everything wired, keeps the house rules, and answers over HTTP. Each
 * runs on a real PostgreSQL of its own. Tests of single rules stand with their features.
 */
@NullMarked
package org.bandtrail.siteinstalls;

import org.jspecify.annotations.NullMarked;
