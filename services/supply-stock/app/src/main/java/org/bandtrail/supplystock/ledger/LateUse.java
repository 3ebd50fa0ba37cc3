package org.bandtrail.supplystock.ledger;

/**
 * What an account used of a reel or batch before its receipt was in the books.
 *
 * @param quantity millimetres or pieces
 */
record LateUse(String account, String tree, String person, String what, long quantity) {}
