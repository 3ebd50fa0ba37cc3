package org.bandtrail.frontdesk.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.FrontDeskSettings;
import org.bandtrail.frontdesk.MapSettings;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;

/**
 * Who may do what. Everybody who signed in may read; writing is by role; the API for creating people asks for the key
 * the services share. Pages may load nothing from elsewhere (content security policy), forms carry a CSRF token.
 */
@Configuration(proxyBeanMethods = false)
class SignInWiring {
    private static final String POLICY = "default-src 'self'; img-src 'self' data:%s; object-src 'none'; "
            + "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    @Bean
    @Order(1)
    SecurityFilterChain forPrograms(HttpSecurity http, FrontDeskSettings settings) {
        return http.securityMatcher("/api/**")
                .csrf(csrf -> csrf.disable())
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .authorizeHttpRequests(requests -> requests.anyRequest()
                        .access((authentication, request) -> new AuthorizationDecision(
                                knowsKey(request.getRequest().getHeader("Authorization"), settings.serviceKey()))))
                .exceptionHandling(errors -> errors.authenticationEntryPoint(
                                (request, response, missing) -> response.setStatus(401))
                        .accessDeniedHandler((request, response, refused) -> response.setStatus(401)))
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain forPeople(HttpSecurity http, MapSettings map) {
        return http.authorizeHttpRequests(requests -> {
                    requests.requestMatchers("/style/**", "/script/**", "/mark.svg", "/type/**", "/sign-in", "/error")
                            .permitAll()
                            .requestMatchers("/actuator/health/**", "/actuator/health")
                            .permitAll();
                    WhoMay.decide(requests);
                })
                .formLogin(form -> form.loginPage("/sign-in").permitAll().successHandler(new FrontDoor()))
                .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
                .headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives(POLICY.formatted(map.pictureSource()))))
                .build();
    }

    @Bean
    PasswordEncoder passwords() {
        return new BCryptPasswordEncoder();
    }

    @Bean
    UserDetailsService whoSignsIn(People people) {
        return username -> people.signingInAs(username.strip().toLowerCase(Locale.ROOT))
                .map(person -> signedIn(person, people))
                .orElseThrow(() -> new UsernameNotFoundException("Nobody signs in as [" + username + "]."));
    }

    private static SignedIn signedIn(Person person, People people) {
        String hash = people.passwordHash(person.personId());
        String username = person.username();
        if (hash == null || username == null) {
            throw new UsernameNotFoundException("Person [" + person.personId() + "] does not sign in.");
        }
        return new SignedIn(person.personId(), username, hash, List.copyOf(person.roles()), person.frontDoor());
    }

    private static boolean knowsKey(@org.jspecify.annotations.Nullable String header, String key) {
        return header != null
                && !key.isBlank()
                && MessageDigest.isEqual(
                        header.getBytes(StandardCharsets.UTF_8), ("Bearer " + key).getBytes(StandardCharsets.UTF_8));
    }
}
