package org.bandtrail.eventexchange;

import java.lang.reflect.Modifier;
import java.time.Instant;
import java.util.regex.Pattern;

/**
 * Reads from a contract record what the outbox needs to know. Contracts depend on nothing, so they follow a convention
 * instead of an interface: {@code public static final String TYPE = "supply-stock.reel-received.v1"}, a method
 * {@code String subject()} such as {@code reel/R-0001}, and a component {@code Instant happenedAt}.
 */
public final class PublishedName {
    private static final Pattern TYPE = Pattern.compile("[a-z][a-z-]*\\.[a-z][a-z-]*\\.v[1-9][0-9]*");
    private static final Pattern SUBJECT = Pattern.compile("[a-z][a-z-]*/[A-Z0-9][A-Z0-9-]*");

    private PublishedName() {}

    /**
     * Returns the published name of a contract record's class.
     *
     * @throws IllegalArgumentException naming the class if it has no TYPE or one that is not service.fact.version
     */
    public static String of(Class<?> contractType) {
        try {
            var field = contractType.getField("TYPE");
            if (Modifier.isStatic(field.getModifiers()) && field.get(null) instanceof String name) {
                return checked(contractType, "TYPE", TYPE, name);
            }
        } catch (ReflectiveOperationException missing) {
            throw new IllegalArgumentException(
                    contractType.getName() + " has no public static final String TYPE, so it cannot be published.",
                    missing);
        }
        throw new IllegalArgumentException(contractType.getName() + ".TYPE must be a static String.");
    }

    /**
     * Returns what a contract record is about, for example {@code reel/R-0001}.
     *
     * @throws IllegalArgumentException naming the class and the value if it is not kind/ID
     */
    public static String subjectOf(Object contractRecord) {
        String subject = called(contractRecord, "subject", String.class);
        return checked(contractRecord.getClass(), "subject()", SUBJECT, subject);
    }

    /**
     * Returns when a contract record's fact happened.
     *
     * @throws IllegalArgumentException naming the class if it does not say
     */
    public static Instant happenedAt(Object contractRecord) {
        return called(contractRecord, "happenedAt", Instant.class);
    }

    private static <T> T called(Object contractRecord, String method, Class<T> answerType) {
        Class<?> type = contractRecord.getClass();
        try {
            Object answer = type.getMethod(method).invoke(contractRecord);
            if (answerType.isInstance(answer)) {
                return answerType.cast(answer);
            }
        } catch (ReflectiveOperationException missing) {
            throw new IllegalArgumentException(
                    "%s.%s() cannot be called, so it cannot be published.".formatted(type.getName(), method), missing);
        }
        throw new IllegalArgumentException("%s.%s() of [%s] must be a %s."
                .formatted(type.getName(), method, contractRecord, answerType.getSimpleName()));
    }

    private static String checked(Class<?> type, String what, Pattern spelling, String value) {
        if (!spelling.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "%s of %s [%s] is not spelt %s.".formatted(what, type.getName(), value, spelling.pattern()));
        }
        return value;
    }
}
