package org.bandtrail.supplystock.invoices;

/** What a line of an invoice is for. */
public enum LineUse {
    /** Goods that were ordered; matched with order and delivery. */
    GOODS,
    /** Carriage, to be spread over the goods it brought. */
    FREIGHT,
    /** Customs duty and taxes nobody gives back, to be spread over the goods. */
    DUTY,
    /** Anything else; paid, and no part of the cost of goods. */
    OTHER
}
