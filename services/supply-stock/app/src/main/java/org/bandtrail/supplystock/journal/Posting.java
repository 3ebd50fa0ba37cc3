package org.bandtrail.supplystock.journal;

/**
 * Value on one of our accounts for one reason in one month.
 *
 * @param what what happened, for example fitted
 * @param ours our account; stock and sites are told apart: {@code stock:TAPE}, {@code site:S-MILL}
 * @param minor minor units of the currency; above zero is a debit, below a credit
 */
record Posting(String currency, String what, String ours, long minor) {}
