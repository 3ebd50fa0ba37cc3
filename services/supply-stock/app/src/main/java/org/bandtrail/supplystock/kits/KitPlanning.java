package org.bandtrail.supplystock.kits;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.costs.OldestFirst;
import org.bandtrail.supplystock.handouts.FastenersOnShelf;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.kitlists.Cut;
import org.bandtrail.supplystock.kitlists.KitRule;
import org.bandtrail.supplystock.kitlists.KitRules;
import org.bandtrail.supplystock.kitlists.Pick;
import org.bandtrail.supplystock.kitlists.ReelChoice;
import org.bandtrail.supplystock.kitlists.TreeList;
import org.bandtrail.supplystock.kitlists.TreeNeed;
import org.springframework.stereotype.Component;

/** Brings a tree list, the rule and what is on the shelf together. Nothing is reserved by it. */
@Component
class KitPlanning {
    private final KitRules rules;
    private final Items items;
    private final ReelsOnShelf reels;
    private final FastenersOnShelf fasteners;

    KitPlanning(KitRules rules, Items items, ReelsOnShelf reels, FastenersOnShelf fasteners) {
        this.rules = rules;
        this.items = items;
        this.reels = reels;
        this.fasteners = fasteners;
    }

    /**
     * What the list takes, and from where.
     *
     * @param now reservations that are over by then do not count
     */
    KitPlan plan(KitWish wish, Instant now) {
        Map<MaterialKind, MaterialCode> materials = wish.materials();
        checkKinds(materials);
        KitRule rule = wish.rule(usual(now).rule());
        List<TreeNeed> needs = TreeList.needs(wish.trees(), rule, materials.keySet());
        List<Pick> picks = new ArrayList<>();
        List<KitPlan.Lacking> lacking = new ArrayList<>();
        List<KitPlan.PassedOver> passedOver = new ArrayList<>();
        List<KitPlan.Otherwise> otherwise = new ArrayList<>();
        materials.forEach((kind, material) -> {
            if (kind.onReels()) {
                ReelChoice choice = ReelChoice.of(
                        needs.stream()
                                .map(need -> need.cut(kind))
                                .filter(Objects::nonNull)
                                .toList(),
                        wish.reels(kind),
                        reels.of(material, wish.depotId(), wish.kitId(), now),
                        day(wish.happenedAt()));
                choice.picks().forEach(pick -> picks.add(pick(material, kind, pick)));
                choice.passedOver()
                        .forEach(reel -> passedOver.add(
                                new KitPlan.PassedOver(reel.reel().value(), reel.why())));
                choice.otherwise()
                        .forEach(tree ->
                                otherwise.add(new KitPlan.Otherwise(tree.tree().value(), kind, tree.why())));
                lacking.addAll(lackingOf(material, kind, choice.lacking()));
            } else {
                addFasteners(wish, material, needs, now, picks, lacking);
            }
        });
        return new KitPlan(rule, needs, picks, lacking, passedOver, otherwise);
    }

    /** The version of the usual rule that counts now. */
    KitRules.Version usual(Instant now) {
        return rules.on(day(now));
    }

    private void checkKinds(Map<MaterialKind, MaterialCode> materials) {
        if (materials.isEmpty()) {
            throw new IllegalArgumentException("The kit holds nothing. Say which tape, mesh or fastener it takes.");
        }
        materials.forEach((kind, material) -> {
            MaterialKind known = items.kindOf(material);
            if (known != kind) {
                throw new IllegalArgumentException(
                        "Item [%s] is %s, not %s. Choose another item.".formatted(material, known, kind));
            }
        });
    }

    private static Pick pick(MaterialCode material, MaterialKind kind, ReelChoice.ReelPick pick) {
        return new Pick(
                pick.reel().reel().value(),
                material,
                kind,
                pick.reel().place(),
                pick.reel().there().mm(),
                pick.taken().mm(),
                pick.cuts());
    }

    private static List<KitPlan.Lacking> lackingOf(MaterialCode material, MaterialKind kind, List<Cut> cuts) {
        if (cuts.isEmpty()) {
            return List.of();
        }
        Length sum = cuts.stream().map(Cut::whole).reduce(Length.ZERO, Length::plus);
        List<String> trees = cuts.stream().map(cut -> cut.tree().value()).toList();
        return List.of(new KitPlan.Lacking(
                material.value(),
                kind,
                sum.mm(),
                trees,
                "no reel of %s has enough left for tree %s, %s together."
                        .formatted(material, String.join(", ", trees), sum)));
    }

    private void addFasteners(
            KitWish wish,
            MaterialCode material,
            List<TreeNeed> needs,
            Instant now,
            List<Pick> picks,
            List<KitPlan.Lacking> lacking) {
        long wanted = needs.stream().mapToLong(need -> need.fasteners().count()).sum();
        if (wanted == 0) {
            return;
        }
        List<OldestFirst.OnShelf> shelf = fasteners.of(material, wish.depotId(), wish.kitId(), now);
        OldestFirst.Choice choice = OldestFirst.choose(Pieces.of(wanted), shelf);
        for (OldestFirst.Pick pick : choice.picks()) {
            long there = shelf.stream()
                    .filter(batch -> batch.batch().equals(pick.batch()))
                    .mapToLong(batch -> batch.pieces().count())
                    .sum();
            picks.add(new Pick(
                    pick.batch().value(),
                    material,
                    MaterialKind.FASTENER,
                    Place.parse(fasteners.place(pick.batch(), wish.depotId())),
                    there,
                    pick.pieces().count(),
                    List.of()));
        }
        if (!choice.complete()) {
            lacking.add(new KitPlan.Lacking(
                    material.value(),
                    MaterialKind.FASTENER,
                    choice.missing().count(),
                    List.of(),
                    "%s of the %s of %s are not there.".formatted(choice.missing(), Pieces.of(wanted), material)));
        }
    }

    private static LocalDate day(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC).toLocalDate();
    }
}
