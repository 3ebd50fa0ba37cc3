package org.bandtrail.frontdesk.moving;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * What a page that says "done" offers to take back: the move just made, by the moment the books learnt of it. Supply-stock
 * makes the opposite move, and only if nothing else moved the same reel or batch since.
 *
 * @param reels labels of reels
 * @param batches labels of batches
 * @param at when the books learnt of the move
 * @param page the page to go on at, one of {@link #PAGES}
 */
public record TakeBack(List<String> reels, List<String> batches, Instant at, String page) {
    /** The pages from which something is taken back. */
    static final List<String> PAGES = List.of("/bins", "/set-aside", "/vehicles");

    /** Offers it on the next page; an answer without its moment cannot be taken back, so nothing is offered. */
    static void offer(
            RedirectAttributes next, List<String> reels, List<String> batches, @Nullable Instant at, String page) {
        if (at != null) {
            next.addFlashAttribute("takeBack", new TakeBack(reels, batches, at, page));
        }
    }

    /** Offers it for one label on the next page. */
    static void offer(RedirectAttributes next, Label label, @Nullable Instant at, String page) {
        List<String> one = List.of(label.id());
        offer(next, label.batch() ? List.of() : one, label.batch() ? one : List.of(), at, page);
    }

    /**
     * What the form of the offer said.
     *
     * @throws UnfitForm if it names no page of these
     */
    static TakeBack read(Form form) {
        String page = form.text("page");
        if (!PAGES.contains(page)) {
            throw new UnfitForm("The page [%s] is none from which something is taken back.".formatted(page));
        }
        return new TakeBack(form.filled("reel"), form.filled("batch"), Instant.parse(form.text("at")), page);
    }

    /** The body of the command. */
    Map<String, Object> into(Form.Body body) {
        return body.put("reels", reels)
                .put("batches", batches)
                .put("at", at.toString())
                .done();
    }
}
