/**
 * What a kit must hold for a list of trees, and from which reels it is taken. A tree list with girths, or with ready
 * lengths, becomes needs in millimetres and pieces by a simple rule whose figures come with the request or from
 * versioned data; then stock is chosen: part reels first, then what expires first, then what came first.
 *
 * <p>Everything here is pure: no clock, no SQL. What is chosen is only a proposal; the reservation and the handout ask
 * the reels themselves.
 */
@NullMarked
package org.bandtrail.supplystock.kitlists;

import org.jspecify.annotations.NullMarked;
