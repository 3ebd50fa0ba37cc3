/**
 * A reel is one physical roll of tape or mesh with its own identity and remaining length. Law: what was received is
 * what lies in depots, with crews, on trees, in waste bags, disposed, written off or missing, in millimetres and in
 * money.
 *
 * <p>Wishes, which may be refused: receive, hand out, settle. Facts, which never are: what the field services tell
 * (fitted, taken down, put back into use, scrapped, disposed) and a measured return. A fact that contradicts the books
 * leaves a negative or missing balance that names a place; the audit shows it until it heals or is settled.
 *
 * <p>Start reading at {@link org.bandtrail.supplystock.reels.ReelCommand} and
 * {@link org.bandtrail.supplystock.reels.ReelEvent}; all rules are in {@link org.bandtrail.supplystock.reels.Reel}.
 */
@NullMarked
package org.bandtrail.supplystock.reels;

import org.jspecify.annotations.NullMarked;
