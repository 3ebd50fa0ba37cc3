package org.bandtrail.eventexchange.entry;

import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bandtrail.eventstore.Projectors;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;

/**
 * Lets a client read what it has just written: with {@code Prefer: wait=2} (RFC 7240, section 4.3) a command is
 * answered only when the service's read models have caught up, or after so many seconds. The answer's header
 * {@code Preference-Applied} says whether they had.
 */
@ControllerAdvice
final class ReadYourWrites implements ResponseBodyAdvice<Object> {
    private static final Pattern WAIT = Pattern.compile("(?:^|[,;\\s])wait=(\\d{1,2})(?:$|[,;\\s])");
    private final ObjectProvider<Projectors> projectors;

    ReadYourWrites(ObjectProvider<Projectors> projectors) {
        this.projectors = projectors;
    }

    @Override
    public boolean supports(MethodParameter method, Class<? extends HttpMessageConverter<?>> converter) {
        return true;
    }

    @Override
    public @Nullable Object beforeBodyWrite(
            @Nullable Object body,
            MethodParameter method,
            MediaType type,
            Class<? extends HttpMessageConverter<?>> converter,
            ServerHttpRequest request,
            ServerHttpResponse response) {
        List<String> wishes = request.getHeaders().getOrEmpty("Prefer");
        if (!wishes.isEmpty() && request.getMethod() != HttpMethod.GET) {
            Matcher wait = WAIT.matcher(String.join(",", wishes));
            Projectors there = projectors.getIfAvailable();
            if (wait.find() && there != null && there.caughtUp(Duration.ofSeconds(Long.parseLong(wait.group(1))))) {
                response.getHeaders().set("Preference-Applied", "wait=" + wait.group(1));
            }
        }
        return body;
    }
}
