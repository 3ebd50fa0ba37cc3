package org.bandtrail.frontdesk.people;

import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.wording.Units;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Sign-in, the settings of whoever reads, and the page on which the lead looks after people. */
@Controller
class PeopleController {
    private final People people;
    private final PasswordEncoder passwords;

    PeopleController(People people, PasswordEncoder passwords) {
        this.people = people;
        this.passwords = passwords;
    }

    @GetMapping("/sign-in")
    String signIn() {
        return "sign-in";
    }

    @GetMapping("/settings")
    String settings() {
        return "settings";
    }

    @PostMapping("/settings")
    String prefer(@RequestParam Units units, @RequestParam String theme, RedirectAttributes next) {
        SignedIn reader = SignedIn.current();
        if (reader != null && List.of("auto", "day", "dark").contains(theme)) {
            people.prefer(reader.personId(), units, theme);
            next.addFlashAttribute(
                    "done",
                    "Saved. Pages now show lengths in "
                            + (units == Units.SI ? "metres and millimetres." : "feet and inches."));
        }
        return "redirect:/settings";
    }

    @GetMapping("/people")
    String all(Model page) {
        page.addAttribute("people", people.all());
        page.addAttribute("roles", Role.values());
        return "people";
    }

    @PostMapping("/people")
    String add(
            @RequestParam String personId,
            @RequestParam String name,
            @RequestParam(defaultValue = "") String phone,
            @RequestParam(defaultValue = "") String username,
            @RequestParam(defaultValue = "") String password,
            @RequestParam(required = false) @Nullable List<Role> roles,
            RedirectAttributes next) {
        boolean signsIn = !username.isBlank() && !password.isBlank();
        Person person = new Person(
                new PersonId(personId).value(),
                name.strip(),
                phone.isBlank() ? null : phone.strip(),
                signsIn ? username.strip().toLowerCase(Locale.ROOT) : null,
                Units.SI,
                "auto",
                false,
                roles == null ? List.of() : roles);
        people.save(person, signsIn ? passwords.encode(password) : null);
        next.addFlashAttribute("done", person.name() + " is on the list" + (signsIn ? " and can sign in." : "."));
        return "redirect:/people";
    }

    @PostMapping("/people/{personId}/erase")
    String erase(@PathVariable String personId, RedirectAttributes next) {
        people.erase(personId);
        next.addFlashAttribute(
                "done",
                "Name, phone and sign-in of " + personId + " are gone. What " + personId
                        + " did stays in the books under that identity.");
        return "redirect:/people";
    }
}
