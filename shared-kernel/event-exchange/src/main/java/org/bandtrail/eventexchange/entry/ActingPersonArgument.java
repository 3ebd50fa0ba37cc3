package org.bandtrail.eventexchange.entry;

import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;

/** Gives controllers their {@link ActingPerson}. */
final class ActingPersonArgument implements HandlerMethodArgumentResolver {
    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == ActingPerson.class;
    }

    /**
     * Reads the header.
     *
     * @throws IllegalArgumentException if it is missing or not an identity
     */
    @Override
    public ActingPerson resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest request,
            @Nullable WebDataBinderFactory binders) {
        String person = request.getHeader(ActingPerson.HEADER);
        if (person == null || person.isBlank()) {
            throw new IllegalArgumentException(
                    "The header %s must say who acts, for example P-07.".formatted(ActingPerson.HEADER));
        }
        return new ActingPerson(new PersonId(person));
    }
}
