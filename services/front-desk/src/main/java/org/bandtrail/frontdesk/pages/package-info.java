/**
 * What every page has: the reader's pen ({@link org.bandtrail.frontdesk.pages.Desk}) that puts figures, days and names
 * in words, what was entered in a form so that nothing typed is lost, and the pages for what went wrong. A page says
 * what happened, why, and what to do; it blames nobody. Pages know services only through the neighbours package.
 */
@NullMarked
package org.bandtrail.frontdesk.pages;

import org.jspecify.annotations.NullMarked;
