/**
 * What was spent, by site and at the actual cost of the reel that was cut. Below the table stands the identity that
 * shows no cent leaked: received equals still in stock plus charged to sites plus written off. All amounts come from
 * supply-stock; only names are added here.
 */
@NullMarked
package org.bandtrail.frontdesk.spend;

import org.jspecify.annotations.NullMarked;
