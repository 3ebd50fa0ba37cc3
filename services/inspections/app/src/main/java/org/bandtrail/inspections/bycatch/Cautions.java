package org.bandtrail.inspections.bycatch;

import java.util.List;

/** What to do when an animal is stuck, in order. Common practice of wildlife care, in our own words. */
final class Cautions {
    /** Shown wherever bycatch is entered or listed. */
    static final List<String> STUCK_ANIMAL = List.of(
            "Do not pull and do not try to free it.",
            "Cover every exposed sticky area with paper or cloth.",
            "Cut the band on both sides and leave the piece on the animal.",
            "Put it in a dark, lidded, ventilated box, quiet and warm. No food, water or oil unless the rehabilitator"
                    + " says so.",
            "Call a licensed wildlife rehabilitator at once.",
            "A protected species may be held only to hand it over (United States: Migratory Bird Treaty Act and 50 CFR"
                    + " part 21); elsewhere ask what the law says.",
            "Then take the band down or fit a sound guard, and tell the supervisor.");

    private Cautions() {}
}
