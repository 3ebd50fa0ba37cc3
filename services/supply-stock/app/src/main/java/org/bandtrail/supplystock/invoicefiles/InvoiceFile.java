package org.bandtrail.supplystock.invoicefiles;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A file from a supplier, whichever of the known forms it has. */
public final class InvoiceFile {
    private InvoiceFile() {}

    /**
     * Reads a file: one that begins with {@code <} is UBL 2.1, any other is CSV.
     *
     * @param bytes at most 5,000,000
     * @throws UnreadableInvoice naming every place that cannot be read
     */
    public static SupplierInvoice read(byte[] bytes) {
        if (bytes.length > XmlTree.BYTES_AT_MOST) {
            throw new UnreadableInvoice(
                    "", "The file has %d bytes; at most %d are read.".formatted(bytes.length, XmlTree.BYTES_AT_MOST));
        }
        return looksLikeXml(bytes) ? UblReader.read(bytes) : CsvReading.read(bytes);
    }

    /**
     * Reads what somebody entered by hand: rows with the columns of a CSV file. Row 1 is the first of them.
     *
     * @throws UnreadableInvoice naming row and column of everything that cannot be read
     */
    public static SupplierInvoice entered(List<Map<String, String>> rows) {
        List<CsvSheet.Row> numbered = new ArrayList<>();
        for (Map<String, String> row : rows) {
            numbered.add(new CsvSheet.Row(numbered.size() + 1, row));
        }
        return CsvReading.read(numbered);
    }

    private static boolean looksLikeXml(byte[] bytes) {
        for (byte each : bytes) {
            boolean blankOrMark = each <= ' ';
            if (!blankOrMark) {
                return each == '<';
            }
        }
        throw new UnreadableInvoice("", "The file is empty.");
    }
}
