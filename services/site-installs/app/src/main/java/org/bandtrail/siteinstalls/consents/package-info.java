/**
 * Consents: what the owner of a site allows, for which pests, on which part of it, from which day to which. A consent
 * is asked, given or declined, renewed and withdrawn; the person is a pseudonym here and reachable by way of
 * {@code contacts}. Nothing is planned on a site without a consent that holds on the day: others call
 * {@code Consents.mustHold}. What a crew did without one is a fact, is kept, and is shown as a finding.
 */
@NullMarked
package org.bandtrail.siteinstalls.consents;

import org.jspecify.annotations.NullMarked;
