package org.bandtrail.eventexchange.entry;

import java.net.URI;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;

/** Builds problems as in RFC 9457; the type is {@code /problems/<name>} and the title is the name in words. */
final class Problems {
    private static final Set<String> RESERVED = Set.of("type", "title", "status", "detail", "instance");

    private Problems() {}

    static ProblemDetail problem(int status, String name, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(HttpStatusCode.valueOf(status), detail);
        problem.setType(URI.create("/problems/" + name));
        problem.setTitle(inWords(name));
        return problem;
    }

    /** Adds what an exception has to say beyond its message. */
    static ProblemDetail with(Map<String, ?> fields, ProblemDetail problem) {
        fields.forEach((name, value) -> {
            if (RESERVED.contains(name)) {
                throw new IllegalStateException("Problem field [%s] is reserved by RFC 9457.".formatted(name));
            }
            problem.setProperty(name, value);
        });
        return problem;
    }

    private static String inWords(String name) {
        String words = name.replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
