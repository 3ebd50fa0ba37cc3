/**
 * What was spent, by site, tree, item, crew, person, grant and month, and beside the work done for it. Every figure
 * opens into the single charges behind it. Below stands the identity that shows no cent leaked: received equals
 * still in stock plus charged to sites plus written off plus written down. All amounts come from supply-stock; only
 * names are added here.
 */
@NullMarked
package org.bandtrail.frontdesk.spend;

import org.jspecify.annotations.NullMarked;
