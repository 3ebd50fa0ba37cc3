package org.bandtrail.frontdesk.people;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.userdetails.UserDetails;

/**
 * A person who signed in, as the security filter keeps them for the session.
 *
 * @param personId the identity sent to the services with everything this person does
 */
public record SignedIn(String personId, String username, String hash, List<Role> roles, String frontDoor)
        implements UserDetails {

    /** The person of the current request, or null before sign-in. */
    public static @Nullable SignedIn current() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedIn signedIn ? signedIn : null;
    }

    @Override
    public List<GrantedAuthority> getAuthorities() {
        return roles.stream()
                .<GrantedAuthority>map(role -> new SimpleGrantedAuthority("ROLE_" + role.name()))
                .toList();
    }

    @Override
    public String getPassword() {
        return hash;
    }

    @Override
    public String getUsername() {
        return username;
    }
}
