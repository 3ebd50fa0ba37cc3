/**
 * Opening hours of a site: when a crew may be there, as plain rows for each weekday and exceptions for single days. No
 * rows at all means that the time does not matter; rows mean that a weekday without one is closed. All times are those
 * of the site's own clock, so no time zone is asked here.
 */
@NullMarked
package org.bandtrail.siteinstalls.openinghours;

import org.jspecify.annotations.NullMarked;
