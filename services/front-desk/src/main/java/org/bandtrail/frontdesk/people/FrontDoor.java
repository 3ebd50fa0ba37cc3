package org.bandtrail.frontdesk.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;

/** After sign-in: back to the page that was asked for, or else to where this person's day begins. */
final class FrontDoor extends SavedRequestAwareAuthenticationSuccessHandler {

    @Override
    protected String determineTargetUrl(
            HttpServletRequest request, HttpServletResponse response, @Nullable Authentication authentication) {
        return authentication != null && authentication.getPrincipal() instanceof SignedIn person
                ? person.frontDoor()
                : "/";
    }
}
