/**
 * Bands: sticky tape round a trunk, mostly under a guard of mesh. {@code FitBand} says what a crew did and is never
 * refused; whatever contradicts the books ({@link org.bandtrail.siteinstalls.bands.BandFlag}) is stored with it as a
 * finding. What inspections tells ({@code NoteReplacement}, {@code NoteTakenDown}) is noted even before the fit is
 * known, because telephones deliver late. Of several facts about one band those that happened last count, whatever
 * order they came in. A finding stays stored as it was, and {@code open} tells on every reading whether it is still so.
 * Bands that are past or near the day by which they must be off are the removal alarm
 * ({@link org.bandtrail.siteinstalls.bands.Removals}); how near is data.
 */
@NullMarked
package org.bandtrail.siteinstalls.bands;

import org.jspecify.annotations.NullMarked;
