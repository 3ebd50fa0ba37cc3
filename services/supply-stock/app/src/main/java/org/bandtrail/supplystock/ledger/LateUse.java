package org.bandtrail.supplystock.ledger;

/**
 * What an account used of a reel or batch before its receipt was in the books.
 *
 * @param crew it counts for, or nothing
 * @param quantity millimetres or pieces
 */
record LateUse(String account, String tree, String person, String crew, String what, long quantity) {}
