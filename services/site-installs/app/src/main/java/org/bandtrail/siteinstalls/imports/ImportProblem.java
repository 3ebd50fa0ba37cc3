package org.bandtrail.siteinstalls.imports;

/**
 * Why a row cannot be stored.
 *
 * @param row as a spreadsheet numbers it
 * @param column name of the column, empty if the whole row is meant
 * @param value as written
 * @param problem what is wrong
 * @param advice what to do
 */
public record ImportProblem(int row, String column, String value, String problem, String advice) {}
