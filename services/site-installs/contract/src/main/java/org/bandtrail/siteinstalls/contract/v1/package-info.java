/**
 * What site-installs tells the other services, version 1. Everything here is a promise: a change is a new optional
 * component with a new sample, anything else becomes version 2 beside this one. The samples under {@code samples/} are
 * the words of the promise; a reader tests its translation against each of them.
 *
 * <table>
 * <caption>Events</caption>
 * <tr><th>event</th><th>versions</th><th>subject</th><th>readers</th></tr>
 * <tr><td>{@code site-installs.band-fitted}</td><td>v1</td><td>{@code band/<bandId>}</td>
 * <td>supply-stock (material leaves the crew for the tree), inspections (a band to visit)</td></tr>
 * <tr><td>{@code site-installs.material-needed}</td><td>v1</td><td>{@code plan/<planId>}</td>
 * <td>supply-stock (what plans need is demand to come)</td></tr>
 * </table>
 */
@NullMarked
package org.bandtrail.siteinstalls.contract.v1;

import org.jspecify.annotations.NullMarked;
