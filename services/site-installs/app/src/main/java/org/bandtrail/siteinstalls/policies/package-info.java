/**
 * The cut-length policy: every value of the trade that decides how a band is cut, hung and doubted. Practice differs
 * between pests, places and years, so each version says from which day it holds, where its values come from and why
 * they were chosen; nothing is overwritten. {@code PublishCutLengths} adds a version; it is refused when the source
 * or the reason is missing. The first version comes from {@code defaults/cut-lengths.json}.
 */
@NullMarked
package org.bandtrail.siteinstalls.policies;

import org.jspecify.annotations.NullMarked;
