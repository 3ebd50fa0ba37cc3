package org.bandtrail.supplystock.invoicefiles;

/**
 * One place in a file that cannot be read.
 *
 * @param row the line of the file, 1 is the first; 0 if the place has no row
 * @param column name of the column or path of the element, or empty
 * @param message what is wrong there and what to write instead
 */
public record FileProblem(int row, String column, String message) {

    /** Place and message in one sentence. */
    public String sentence() {
        String place = (row > 0 ? "row " + row : "") + (row > 0 && !column.isEmpty() ? ", " : "") + column;
        return place.isEmpty() ? message : place + ": " + message;
    }
}
