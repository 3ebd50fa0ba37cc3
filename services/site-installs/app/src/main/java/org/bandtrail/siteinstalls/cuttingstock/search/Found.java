package org.bandtrail.siteinstalls.cuttingstock.search;

/**
 * What the search found.
 *
 * @param layout the best plan
 * @param cost of it, in the units of {@link CutTask#cost}
 * @param bound no plan costs less
 * @param cutOff whether patience ended the search
 */
public record Found(Layout layout, long cost, long bound, boolean cutOff) {}
