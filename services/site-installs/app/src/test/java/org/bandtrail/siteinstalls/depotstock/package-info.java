/**
 * The copy of what lies in the depots, on a real database. Changes must add up whatever their order, because the
 * history and the news are told side by side. What is set aside or kept by a kit is there but not free.
 */
@NullMarked
package org.bandtrail.siteinstalls.depotstock;

import org.jspecify.annotations.NullMarked;
