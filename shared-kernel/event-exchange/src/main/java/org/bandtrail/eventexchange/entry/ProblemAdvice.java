package org.bandtrail.eventexchange.entry;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.eventstore.PostgresErrors;
import org.bandtrail.eventstore.Refusal;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.validation.FieldError;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.springframework.web.servlet.resource.NoResourceFoundException;

/**
 * Turns everything that goes wrong in a request into a problem as in RFC 9457 that a person can act on: a refusal with
 * its own type, a value that was not understood by its name, a database that is away as "try again", and the rest as
 * our fault, without its inner details.
 */
@RestControllerAdvice
class ProblemAdvice extends ResponseEntityExceptionHandler {
    private static final Logger LOG = LoggerFactory.getLogger(ProblemAdvice.class);
    private static final String NOT_UNDERSTOOD = "not-understood";
    private static final String RETRY_AFTER_SECONDS = "5";

    @ExceptionHandler
    ResponseEntity<ProblemDetail> refused(Refusal refusal) {
        return answer(refusal, Problems.problem(refusal.status(), refusal.problem(), message(refusal)));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> notUnderstood(IllegalArgumentException misfit) {
        return answer(misfit, Problems.problem(400, NOT_UNDERSTOOD, message(misfit)));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> notUnderstood(MethodArgumentTypeMismatchException misfit) {
        Throwable root = misfit.getMostSpecificCause();
        String why = root instanceof IllegalArgumentException && root.getMessage() != null ? root.getMessage() : "";
        return answer(
                misfit,
                Problems.problem(
                        400,
                        NOT_UNDERSTOOD,
                        "%s [%s] is not understood. %s"
                                .formatted(misfit.getName(), misfit.getValue(), why)
                                .strip()));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> everythingElse(RuntimeException failure) {
        if (PostgresErrors.away(failure)) {
            LOG.warn("The database is away: {}", message(failure));
            return ResponseEntity.status(503)
                    .header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS)
                    .body(Problems.problem(
                            503, "try-again", "The database is away just now. Nothing was stored; try again."));
        }
        LOG.error("A request failed", failure);
        return answer(
                failure,
                Problems.problem(
                        500,
                        "our-fault",
                        "Something is wrong on our side and was written to the log. Nothing was stored."));
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleNoResourceFoundException(
            NoResourceFoundException nowhere, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        String detail =
                "There is nothing at [/%s].".formatted(nowhere.getResourcePath().replaceFirst("^/", ""));
        return handleExceptionInternal(nowhere, Problems.problem(404, "no-such", detail), headers, status, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException unreadable,
            HttpHeaders headers,
            HttpStatusCode status,
            WebRequest request) {
        UnreadableBody body = UnreadableBody.of(unreadable.getCause());
        ProblemDetail problem = Problems.problem(400, NOT_UNDERSTOOD, body.detail());
        if (!body.field().isEmpty()) {
            problem.setProperty("field", body.field());
        }
        return handleExceptionInternal(unreadable, problem, headers, status, request);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException invalid, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        List<FieldProblem> fields =
                invalid.getFieldErrors().stream().map(FieldProblem::of).toList();
        String detail = fields.stream().map(FieldProblem::sentence).reduce("", (a, b) -> (a + " " + b).strip());
        ProblemDetail problem = Problems.problem(400, NOT_UNDERSTOOD, detail);
        problem.setProperty("fields", fields);
        return handleExceptionInternal(invalid, problem, headers, status, request);
    }

    /** What Spring refuses (wrong method, missing parameter), or a controller by status, keeps its status. */
    @Override
    protected @Nullable ResponseEntity<Object> handleExceptionInternal(
            Exception failure, @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        if (body instanceof ProblemDetail problem && "about:blank".equals(String.valueOf(problem.getType()))) {
            String name = status.value() == 404 ? "no-such" : status.is5xxServerError() ? "our-fault" : NOT_UNDERSTOOD;
            ProblemDetail ours = Problems.problem(
                    status.value(), name, Objects.requireNonNullElse(problem.getDetail(), message(failure)));
            return super.handleExceptionInternal(failure, ours, headers, status, request);
        }
        return super.handleExceptionInternal(failure, body, headers, status, request);
    }

    private static ResponseEntity<ProblemDetail> answer(Exception failure, ProblemDetail problem) {
        Map<String, ?> fields = failure instanceof ProblemFields more ? more.problemFields() : Map.of();
        return ResponseEntity.status(problem.getStatus()).body(Problems.with(fields, problem));
    }

    private static String message(Exception failure) {
        return Objects.requireNonNullElse(
                failure.getMessage(), failure.getClass().getSimpleName());
    }

    /** One field that bean validation refused. */
    record FieldProblem(String field, @Nullable Object value, String problem) {
        static FieldProblem of(FieldError error) {
            return new FieldProblem(
                    error.getField(),
                    error.getRejectedValue(),
                    Objects.requireNonNullElse(error.getDefaultMessage(), "is not valid"));
        }

        String sentence() {
            return "Field [%s] with the value [%s] %s.".formatted(field, value, problem);
        }
    }
}
