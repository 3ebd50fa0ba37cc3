package org.bandtrail.siteinstalls.imports;

import java.util.List;

/**
 * What was found in a file.
 *
 * @param columns names of the columns
 * @param rowCount rows below the header that are not blank
 * @param selected rows that meet the conditions
 * @param ready rows that can be stored
 * @param problems why the other selected rows cannot, by row
 * @param questions what is doubted in rows that can, by row
 * @param notes about the file as a whole
 */
public record Preview(
        List<String> columns,
        int rowCount,
        int selected,
        List<ReadyTree> ready,
        List<ImportProblem> problems,
        List<ImportQuestion> questions,
        List<String> notes) {
    /** Keeps its own copies. */
    public Preview {
        columns = List.copyOf(columns);
        ready = List.copyOf(ready);
        problems = List.copyOf(problems);
        questions = List.copyOf(questions);
        notes = List.copyOf(notes);
    }
}
