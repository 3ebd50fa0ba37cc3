/**
 * Tests of consents. Each refusal stands beside the entry that is allowed. The days at both edges of a consent are
 * tested in the rules and again in the database, because both decide whether it holds.
 */
@NullMarked
package org.bandtrail.siteinstalls.consents;

import org.jspecify.annotations.NullMarked;
