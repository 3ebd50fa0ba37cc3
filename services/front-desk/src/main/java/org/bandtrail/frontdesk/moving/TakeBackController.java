package org.bandtrail.frontdesk.moving;

import java.util.List;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** "Take it back" beside what was just done at the shelves. */
@Controller
class TakeBackController {
    private final DepotWork depotWork;

    TakeBackController(DepotWork depotWork) {
        this.depotWork = depotWork;
    }

    @PostMapping("/take-back")
    String takeBack(
            @RequestParam MultiValueMap<String, String> sent,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        TakeBack back = TakeBack.read(form);
        List<Moved.Again> lines = depotWork
                .tell()
                .post("/take-backs", back.into(form.body()), Moved.Back.class)
                .lines();
        next.addFlashAttribute(
                "done",
                lines.stream()
                        .map(line -> line.id() + " is again " + at(desk.place(line.place())))
                        .collect(Collectors.joining("; ", "Taken back: ", ".")));
        return "redirect:" + back.page();
    }

    private static String at(String place) {
        return place.startsWith("depot ") ? "in " + place : place;
    }
}
