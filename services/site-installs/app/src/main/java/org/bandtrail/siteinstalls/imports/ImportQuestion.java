package org.bandtrail.siteinstalls.imports;

import org.jspecify.annotations.Nullable;

/**
 * A value that can be stored but is doubted.
 *
 * @param row as a spreadsheet numbers it
 * @param column name of the column
 * @param value as written
 * @param perhaps what was probably meant, null if nothing suggests itself
 * @param message for whoever knows the tree
 */
public record ImportQuestion(
        int row, String column, String value, @Nullable String perhaps, String message) {}
