package org.bandtrail.supplystock.invoicefiles;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.eventexchange.entry.ProblemFields;
import org.bandtrail.eventstore.Refusal;

/** A file that is no invoice as it stands. Every place is named; nothing of it is stored. */
public final class UnreadableInvoice extends Refusal implements ProblemFields {
    private static final long serialVersionUID = 1L;
    private static final int TOLD_AT_MOST = 20;
    private final transient List<FileProblem> problems;

    /** With all places that are wrong, at least one. */
    public UnreadableInvoice(List<FileProblem> problems) {
        super("The file cannot be read as an invoice. "
                + problems.stream()
                        .limit(TOLD_AT_MOST)
                        .map(FileProblem::sentence)
                        .collect(Collectors.joining(" "))
                + (problems.size() > TOLD_AT_MOST ? " And %d more.".formatted(problems.size() - TOLD_AT_MOST) : "")
                + " Nothing was stored.");
        this.problems = List.copyOf(problems);
    }

    /** With one place that is wrong. */
    public UnreadableInvoice(String column, String message) {
        this(List.of(new FileProblem(0, column, message)));
    }

    /** The places that are wrong. */
    public List<FileProblem> problems() {
        return problems;
    }

    @Override
    public int status() {
        return 422;
    }

    @Override
    public Map<String, ?> problemFields() {
        return Map.of("problems", problems);
    }
}
