package org.bandtrail.supplystock.holdings;

import java.util.List;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.jspecify.annotations.Nullable;

/**
 * What was told wrong is put right by a further move, never by changing what was told. A correction has to make a
 * disagreement between books and field smaller; if the other reel or batch is named that was meant, its half of the
 * correction may begin or end with a person instead, who still has it.
 *
 * @param rules of the reel or batch that is corrected
 */
public record Corrections(StockRules rules) {

    /**
     * The correcting entry.
     *
     * @param quantity millimetres or pieces
     * @param other the reel or batch that was meant or named by mistake, or null if only this one is concerned
     * @param site who pays if the material leaves stock, or is paid back; null if nobody's site
     * @throws StockRefused if the source has less, no disagreement gets smaller, or no reason is given
     */
    public Entry entry(
            Place source,
            Place target,
            long quantity,
            @Nullable String other,
            @Nullable SiteId site,
            String reason,
            PersonId by,
            Occurred occurred) {
        if (reason.isBlank()) {
            throw new StockRefused.ReasonNeeded(rules.subject());
        }
        Holding holding = rules.holding();
        if (quantity <= 0 || holding.at(source) < quantity) {
            throw new StockRefused.NotThere(
                    rules.subject(),
                    source,
                    rules.inWords().apply(quantity),
                    rules.inWords().apply(holding.at(source)),
                    holding.whereabouts().inWords(rules.inWords()));
        }
        boolean between = !outside(source) && !outside(target) && !source.equals(target);
        boolean smaller = holding.disagrees(source) || holding.disagrees(target) && holding.at(target) + quantity <= 0;
        boolean othersHalf = other != null && (persons(source) || persons(target));
        if (!between || !smaller && !othersHalf) {
            throw new StockRefused.NotACorrection(
                    rules.subject(), source, target, rules.inWords().apply(quantity));
        }
        return holding.entry(
                List.of(new Move(source, target, quantity)),
                site == null ? Charge.WRITTEN_OFF : Charge.site(site),
                by,
                occurred);
    }

    private static boolean outside(Place place) {
        return place.kind().isOrigin() || place.kind() == PlaceKind.WRITTEN_OFF;
    }

    private static boolean persons(Place place) {
        return place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING;
    }
}
