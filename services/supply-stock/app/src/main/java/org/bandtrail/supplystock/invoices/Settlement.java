package org.bandtrail.supplystock.invoices;

/** How a disputed line ends. */
public enum Settlement {
    /** It is paid as billed. */
    ACCEPTED,
    /** Only what came is paid, at the billed price; the supplier credits the rest. */
    PAY_RECEIVED,
    /** Nothing of it is paid. */
    NOT_PAID
}
