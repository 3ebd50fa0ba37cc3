package org.bandtrail.eventexchange.entry;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JacksonException.Reference;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.exc.InvalidFormatException;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/**
 * Says in words why a request's JSON does not fit: which field, which value, what was expected. Class names of ours are
 * left out, since they mean nothing to who sent it.
 *
 * @param field path of the field, for example {@code tape.length}; empty if the text as a whole is at fault
 * @param detail the sentence
 */
record UnreadableBody(String field, String detail) {

    static UnreadableBody of(@Nullable Throwable cause) {
        return switch (cause) {
            case UnrecognizedPropertyException unknown ->
                new UnreadableBody(
                        path(unknown),
                        "Field [%s] is not known here. Known are: %s."
                                .formatted(path(unknown), names(unknown.getKnownPropertyIds())));
            case InvalidFormatException format ->
                new UnreadableBody(
                        path(format),
                        "Field [%s] has the value [%s], which is not %s."
                                .formatted(path(format), format.getValue(), expected(format.getTargetType())));
            case StreamReadException syntax ->
                new UnreadableBody(
                        "",
                        "The body is not JSON at line %d, column %d."
                                .formatted(
                                        syntax.getLocation().getLineNr(),
                                        syntax.getLocation().getColumnNr()));
            case DatabindException misfit -> misfit(misfit);
            case null, default -> new UnreadableBody("", "The body is missing or cannot be read.");
        };
    }

    private static UnreadableBody misfit(DatabindException misfit) {
        String field = path(misfit);
        for (Throwable cause = misfit.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof IllegalArgumentException refused && refused.getMessage() != null) {
                return new UnreadableBody(field, "Field [%s]: %s".formatted(field, refused.getMessage()));
            }
        }
        if (misfit instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
            return new UnreadableBody(
                    field, "Field [%s] is missing or is not %s.".formatted(field, expected(mismatch.getTargetType())));
        }
        return new UnreadableBody(field, "Field [%s] cannot be read.".formatted(field));
    }

    private static String path(JacksonException misfit) {
        return misfit.getPath().stream()
                .map(UnreadableBody::step)
                .collect(Collectors.joining())
                .replaceFirst("^\\.", "");
    }

    private static String step(Reference reference) {
        String property = reference.getPropertyName();
        return property == null ? "[" + reference.getIndex() + "]" : "." + property;
    }

    private static String names(java.util.@Nullable Collection<Object> known) {
        List<String> names = known == null
                ? List.of()
                : known.stream().map(String::valueOf).sorted().toList();
        return String.join(", ", names);
    }

    private static String expected(@Nullable Class<?> type) {
        if (type == null) {
            return "what is expected";
        }
        if (type.isEnum()) {
            return "one of " + List.of(type.getEnumConstants());
        }
        return switch (type.getSimpleName()) {
            case "Instant" -> "a time such as 2026-05-04T07:30:00Z";
            case "LocalDate" -> "a date such as 2026-05-04";
            case "UUID" -> "a UUID";
            case "int", "long", "Integer", "Long" -> "a whole number";
            case "boolean", "Boolean" -> "true or false";
            case "String" -> "text";
            default -> "what is expected";
        };
    }
}
