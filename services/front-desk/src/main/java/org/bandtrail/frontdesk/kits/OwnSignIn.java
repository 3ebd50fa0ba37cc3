package org.bandtrail.frontdesk.kits;

import java.util.Locale;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.bandtrail.frontdesk.people.SignedIn;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/** Who signs at the counter's screen: a person with their own name and password, for this one signature only. */
@Component
class OwnSignIn {
    private final UserDetailsService people;
    private final PasswordEncoder passwords;

    OwnSignIn(UserDetailsService people, PasswordEncoder passwords) {
        this.people = people;
        this.passwords = passwords;
    }

    /**
     * The person of the fields signUser and signPassword.
     *
     * @throws UnfitForm if they do not belong together; which of the two is wrong is not said
     */
    SignedIn of(Form form) {
        String name = form.text("signUser").toLowerCase(Locale.ROOT);
        try {
            UserDetails person = people.loadUserByUsername(name);
            if (person instanceof SignedIn signedIn
                    && passwords.matches(form.text("signPassword"), person.getPassword())) {
                return signedIn;
            }
        } catch (UsernameNotFoundException unknown) {
            throw new UnfitForm(wrong(name));
        }
        throw new UnfitForm(wrong(name));
    }

    private static String wrong(String name) {
        return "The sign-in [%s] and its password do not belong together. Nothing was handed out; type them again."
                .formatted(name);
    }
}
