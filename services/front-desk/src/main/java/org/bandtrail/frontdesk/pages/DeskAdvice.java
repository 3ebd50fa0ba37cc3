package org.bandtrail.frontdesk.pages;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.Map;
import org.bandtrail.frontdesk.FrontDeskSettings;
import org.bandtrail.frontdesk.people.People;
import org.bandtrail.frontdesk.people.Person;
import org.bandtrail.frontdesk.people.SignedIn;
import org.bandtrail.frontdesk.wording.CommandIds;
import org.bandtrail.frontdesk.wording.Days;
import org.bandtrail.frontdesk.wording.Figures;
import org.bandtrail.frontdesk.wording.Units;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Puts the reader's pen on every page. */
@ControllerAdvice
class DeskAdvice {
    private final People people;
    private final Clock clock;
    private final FrontDeskSettings settings;
    private final CommandIds ids;

    DeskAdvice(People people, Clock clock, FrontDeskSettings settings, CommandIds ids) {
        this.people = people;
        this.clock = clock;
        this.settings = settings;
        this.ids = ids;
    }

    @ModelAttribute("desk")
    Desk desk(HttpServletRequest request) {
        SignedIn signedIn = SignedIn.current();
        Person reader =
                signedIn == null ? null : people.find(signedIn.personId()).orElse(null);
        return new Desk(
                reader,
                path(request),
                new Figures(reader == null ? Units.SI : reader.units()),
                new Days(clock, settings.zone()),
                reader == null ? Map.of() : people.names(),
                ids);
    }

    private static String path(HttpServletRequest request) {
        String path = request.getRequestURI();
        return path == null ? "/" : path;
    }
}
