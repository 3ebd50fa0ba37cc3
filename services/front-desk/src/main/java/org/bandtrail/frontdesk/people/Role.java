package org.bandtrail.frontdesk.people;

/** What a person does, and so may do, at the front desk. Everybody who signed in may read everything but people. */
public enum Role {
    /** Receives, hands out, takes back, settles what does not add up. */
    DEPOT("depot", "/handouts"),
    /** Fits, looks, replaces, takes down. */
    CREW("crew", "/round"),
    /** Reads what was spent, and sets what orders depend on. */
    FINANCE("finance", "/spend"),
    /** Plans sites and trees and looks after people; may do what the depot and the crew may do. */
    LEAD("lead", "/");

    private final String word;
    private final String frontDoor;

    Role(String word, String frontDoor) {
        this.word = word;
        this.frontDoor = frontDoor;
    }

    /** The role in words. */
    public String word() {
        return word;
    }

    /** The page this role begins the day on. */
    public String frontDoor() {
        return frontDoor;
    }
}
