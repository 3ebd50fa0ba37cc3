/**
 * Pages of the host check: one question per screen, made for a phone and gloves. The answers so far travel in the
 * address, so that going back is going back and nothing is kept here. Which question is next and what the answers say
 * is for site-installs to tell.
 */
@NullMarked
package org.bandtrail.frontdesk.hostchecks;

import org.jspecify.annotations.NullMarked;
