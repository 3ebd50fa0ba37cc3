/**
 * What supply-stock tells the other services, version 1. Everything here is a promise: a change is a new optional
 * component with a new sample, anything else becomes version 2 beside this one. The samples under {@code samples/} are
 * the words of the promise; a reader tests its translation against each of them.
 *
 * <table>
 * <caption>Events</caption>
 * <tr><th>event</th><th>versions</th><th>subject</th><th>readers</th></tr>
 * <tr><td>{@code supply-stock.reel-received}</td><td>v1</td><td>{@code reel/<reelId>}</td>
 * <td>site-installs (a reel a crew may name)</td></tr>
 * <tr><td>{@code supply-stock.kit-handed-out}</td><td>v1</td><td>{@code kit/<kitId>}</td><td>none yet</td></tr>
 * <tr><td>{@code supply-stock.depot-stock-changed}</td><td>v1</td><td>{@code reel/<reelId>} or
 * {@code batch/<batchId>}</td><td>site-installs (what a work plan and a cut plan may count on)</td></tr>
 * <tr><td>{@code supply-stock.holding-labelled}</td><td>v1</td><td>as above</td><td>site-installs (expiry)</td></tr>
 * <tr><td>{@code supply-stock.holding-reserved}</td><td>v1</td><td>as above</td><td>site-installs (what is not
 * free)</td></tr>
 * </table>
 */
@NullMarked
package org.bandtrail.supplystock.contract.v1;

import org.jspecify.annotations.NullMarked;
