package org.bandtrail.siteinstalls.devices;

import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.policies.CutLengths;

/** A length of the policy that the rule of a part adds to the girth. */
public enum FromPolicy {
    /** Where the ends of the tape meet. */
    TAPE_OVERLAP("overlap"),
    /** The folded tab at one end of the tape. */
    TAPE_TAB("tab"),
    /** What lets the guard stand off. */
    MESH_EXTRA("spare length"),
    /** Where the ends of the guard meet. */
    GUARD_SEAM("seam");

    private final String words;

    FromPolicy(String words) {
        this.words = words;
    }

    /** The word for it in a calculation. */
    String words() {
        return words;
    }

    Length of(CutLengths policy) {
        return switch (this) {
            case TAPE_OVERLAP -> policy.tape().overlap();
            case TAPE_TAB -> policy.tape().tab();
            case MESH_EXTRA -> policy.mesh().extra();
            case GUARD_SEAM -> policy.setup().seam();
        };
    }
}
