/**
 * Girths: the circumference of a trunk where the band sits, as people write it and as the books keep it. People
 * measure round the trunk or write a diameter; the books keep whole millimetres of girth, and beside it what was
 * written. A value that cannot be right is never refused, it is doubted: {@link
 * org.bandtrail.siteinstalls.girths.GirthDoubt} names the value and what was probably meant, because the person with
 * the tape in hand knows best.
 */
@NullMarked
package org.bandtrail.siteinstalls.girths;

import org.jspecify.annotations.NullMarked;
