package org.bandtrail.eventexchange.notes;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Positive;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventexchange.entry.ProblemFields;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

@RestController
class NoteController {
    /** A body with every kind of value that services ask for. */
    record NewNote(
            UUID commandId,
            @NotBlank String text,
            ReelId reelId,
            Length length,
            @Positive int lines,
            Instant happenedAt) {}

    @PostMapping("/notes")
    Map<String, String> write(@Valid @RequestBody NewNote note, ActingPerson person) {
        return Map.of("text", note.text(), "by", person.id().value());
    }

    @GetMapping("/notes/{number}")
    String read(@PathVariable long number) {
        throw switch ((int) number) {
            case 404 -> new NoSuch("note", number);
            case 400 -> new IllegalArgumentException("length [4 parsecs] has no unit we know.");
            case 503 ->
                new DataAccessResourceFailureException(
                        "away", new java.sql.SQLException("connection refused", "08001"));
            case 500 -> new IllegalStateException("secret inner detail");
            default -> new OutOfCredit();
        };
    }

    /** The example of RFC 9457, section 3, as one of ours. */
    static final class OutOfCredit extends Refusal implements ProblemFields {
        private static final long serialVersionUID = 1L;

        OutOfCredit() {
            super("Your current balance is 30, but that costs 50.");
        }

        @Override
        public int status() {
            return 403;
        }

        @Override
        public Map<String, ?> problemFields() {
            return Map.of("balance", 30, "accounts", List.of("/account/12345", "/account/67890"));
        }
    }
}
