package org.bandtrail.frontdesk.neighbours;

/**
 * A service did not answer, or answered something the front desk cannot read. Nothing was changed as far as is known.
 */
public final class NeighbourSilent extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String neighbour;

    NeighbourSilent(String neighbour, String what, Throwable cause) {
        super("%s %s".formatted(neighbour, what), cause);
        this.neighbour = neighbour;
    }

    /** The name of the service: supply-stock, site-installs or inspections. */
    public String neighbour() {
        return neighbour;
    }
}
