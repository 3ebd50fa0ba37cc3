package org.bandtrail.siteinstalls.bands;

import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.siteinstalls.policies.PolicyScope;
import org.jspecify.annotations.Nullable;

/**
 * How a device was fitted, beyond its first three pieces. All of it may stay unsaid: then it is one sticky band at the
 * usual place, {@link #USUAL}.
 *
 * @param device code of the kind of device, for example sticky-band
 * @param position which one on the trunk, 1 is the lowest, 1 to 9
 * @param deviation why the crew departed from the plan, in its own words, null if it did not
 * @param photos identities of the photos, in the order they were taken
 * @param seam by how much the ends of the guard overlap, null if nobody measured
 * @param guardClosedBelow whether the guard is closed below, null if nobody said
 * @param programme the programme it is fitted for, null if nobody said
 * @param pest EPPO code of the pest it is fitted for, null if nobody said
 * @param alsoCut further pieces of reels
 * @param alsoCounted further counted parts
 */
public record FitDetails(
        String device,
        int position,
        @Nullable String deviation,
        List<String> photos,
        @Nullable Length seam,
        @Nullable Boolean guardClosedBelow,
        @Nullable String programme,
        @Nullable String pest,
        List<Piece> alsoCut,
        List<Fasteners> alsoCounted) {
    /** The kind that is meant when nobody names one. */
    public static final String STICKY_BAND = "sticky-band";

    /** A sticky band at the lowest place, nothing else said. */
    public static final FitDetails USUAL =
            new FitDetails(STICKY_BAND, 1, null, List.of(), null, null, null, null, List.of(), List.of());

    private static final int HIGHEST_POSITION = 9;

    /**
     * Keeps its own copies.
     *
     * @throws IllegalArgumentException naming a position out of range, a device without a name or a seam below zero
     */
    public FitDetails {
        if (device.isBlank()) {
            throw new IllegalArgumentException("The device has no name. Leave it out for a sticky band.");
        }
        if (position < 1 || position > HIGHEST_POSITION) {
            throw new IllegalArgumentException("The position [%d] is not on a trunk. Count from 1, the lowest, to %d."
                    .formatted(position, HIGHEST_POSITION));
        }
        if (seam != null && seam.isNegative()) {
            throw new IllegalArgumentException("The seam [%s] is below zero.".formatted(seam));
        }
        // Spelt as the policies spell them, so that the lookup finds them.
        PolicyScope scope = new PolicyScope(programme, pest);
        programme = scope.programme();
        pest = scope.pest();
        photos = List.copyOf(photos);
        alsoCut = List.copyOf(alsoCut);
        alsoCounted = List.copyOf(alsoCounted);
    }
}
