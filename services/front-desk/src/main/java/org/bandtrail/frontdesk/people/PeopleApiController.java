package org.bandtrail.frontdesk.people;

import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.wording.Units;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** People created by a program, such as the loader of the demo season. Guarded by the key of the services. */
@RestController
class PeopleApiController {
    private final People people;
    private final PasswordEncoder passwords;

    PeopleApiController(People people, PasswordEncoder passwords) {
        this.people = people;
        this.passwords = passwords;
    }

    /** Creates or updates one person; the same request twice changes nothing more. */
    @PostMapping("/api/people")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void save(@RequestBody NewPerson request) {
        people.save(request.person(), request.password() == null ? null : passwords.encode(request.password()));
    }

    @ExceptionHandler(IllegalArgumentException.class)
    ProblemDetail unreadable(IllegalArgumentException wrong) {
        return ProblemDetail.forStatusAndDetail(HttpStatus.UNPROCESSABLE_CONTENT, String.valueOf(wrong.getMessage()));
    }

    record NewPerson(
            @Nullable String personId,
            @Nullable String name,
            @Nullable String phone,
            @Nullable List<Role> roles,
            @Nullable String username,
            @Nullable String password,
            @Nullable Units units) {

        Person person() {
            if (personId == null || name == null || name.isBlank()) {
                throw new IllegalArgumentException("A person needs a personId and a name.");
            }
            if ((username == null) != (password == null)) {
                throw new IllegalArgumentException(
                        "Person [%s] needs both username and password, or neither.".formatted(personId));
            }
            return new Person(
                    new PersonId(personId).value(),
                    name.strip(),
                    phone,
                    username == null ? null : username.toLowerCase(Locale.ROOT),
                    units == null ? Units.SI : units,
                    "auto",
                    false,
                    roles == null ? List.of() : roles);
        }
    }
}
