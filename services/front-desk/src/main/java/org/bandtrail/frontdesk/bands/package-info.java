/**
 * The crew's pages: the round with what is due and why, a band with its visits, and the forms for fitting, looking,
 * replacing and taking down. What a crew did in the field already happened, so nothing here refuses it; a probable slip
 * is asked about once and can be confirmed. Help for a stuck animal is one tap away from every page.
 */
@NullMarked
package org.bandtrail.frontdesk.bands;

import org.jspecify.annotations.NullMarked;
