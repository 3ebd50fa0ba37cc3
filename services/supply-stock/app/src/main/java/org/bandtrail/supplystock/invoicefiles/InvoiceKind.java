package org.bandtrail.supplystock.invoicefiles;

/** Whether the supplier asks for money or gives some back. */
public enum InvoiceKind {
    /** The supplier asks to be paid. */
    INVOICE,
    /** The supplier takes back what was billed. Its amounts are written without a minus and count against. */
    CREDIT_NOTE;

    /** 1 for an invoice, -1 for a credit note. */
    public int sign() {
        return this == INVOICE ? 1 : -1;
    }
}
