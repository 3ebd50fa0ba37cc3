package org.bandtrail.eventexchange.entry;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Lets in only who knows the key that the services share ({@code Authorization: Bearer <key>}, RFC 6750). The
 * description of the interface and the health of the service are open; both can be closed by configuration.
 */
public final class ServiceKeyFilter extends OncePerRequestFilter {
    private static final List<String> OPEN =
            List.of("/v3/api-docs", "/swagger-ui", "/swagger-ui.html", "/actuator/health");
    private static final String SCHEME = "Bearer ";

    private final byte[] key;

    /** Lets in who sends this key. */
    public ServiceKeyFilter(String key) {
        this.key = key.getBytes(StandardCharsets.UTF_8);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getServletPath() + (request.getPathInfo() == null ? "" : request.getPathInfo());
        return OPEN.stream().anyMatch(open -> path.equals(open) || path.startsWith(open + "/") || isYaml(path, open));
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isKey(request.getHeader(HttpHeaders.AUTHORIZATION))) {
            chain.doFilter(request, response);
            return;
        }
        response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer realm=\"bandtrail\"");
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.getOutputStream().write("""
                {"type":"/problems/key-needed","title":"A service key is needed","status":401,\
                "detail":"Send the header Authorization: Bearer <key> with the services' key."}""".getBytes(StandardCharsets.UTF_8));
    }

    /** Compares in a time that does not depend on how much of the key is right. */
    private boolean isKey(@Nullable String authorization) {
        if (authorization == null || !authorization.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
            return false;
        }
        byte[] given = authorization.substring(SCHEME.length()).strip().getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(key, given);
    }

    private static boolean isYaml(String path, String open) {
        return path.equals(open + ".yaml");
    }
}
