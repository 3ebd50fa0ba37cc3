package org.bandtrail.frontdesk.bands;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;

/**
 * What the form offers for one kind of device on one trunk.
 *
 * @param device code of the kind
 * @param around what the piece round the trunk is called
 * @param tapeMm its length, null if nothing is proposed
 * @param meshMm length of the guard, null if nothing is proposed
 * @param needed every piece of the kind, null for the usual one, whose proposal says it all
 */
record FitOffer(
        String device,
        String around,
        @Nullable Long tapeMm,
        @Nullable Long meshMm,
        Policies.@Nullable Needed needed) {
    /** The kind that is meant when nobody chose one. */
    static final String USUAL = "sticky-band";

    /** The offer for this kind, by the girth of the proposal. */
    static FitOffer of(String device, Installs.Proposal proposal, Policies policies, String measure) {
        if (device.equals(USUAL)) {
            return new FitOffer(device, "Tape", proposal.tapeMm(), proposal.meshMm(), null);
        }
        Policies.Needed needed = policies.pieces(device, proposal.girthMm() + " mm", measure);
        Policies.@Nullable Cut around = in("around", needed.pieces());
        Policies.@Nullable Cut guard = in("guard", needed.pieces());
        return new FitOffer(
                device,
                around == null ? "Tape" : "Round the trunk: " + around.part().name(),
                around == null ? null : around.lengthMm(),
                guard == null ? null : guard.lengthMm(),
                needed);
    }

    /** No lengths, because nothing could be proposed. */
    static FitOffer nothing(String device) {
        return new FitOffer(device, "Tape", null, null, null);
    }

    /** Puts it on the page. */
    void on(Model page) {
        page.addAttribute("device", device);
        page.addAttribute("around", around);
        page.addAttribute("tapeMm", tapeMm);
        page.addAttribute("meshMm", meshMm);
        page.addAttribute("needed", needed);
    }

    private static Policies.@Nullable Cut in(String role, List<Policies.Cut> pieces) {
        return pieces.stream()
                .filter(piece -> piece.part().role().equals(role))
                .findFirst()
                .orElse(null);
    }
}
