package org.bandtrail.local.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A crew putting bands up: which tree is next, how long to cut, what is written down. */
final class Fitting {
    /** Overlap of 50 mm and a tab of 19 mm at each end (defaults of the trade). */
    private static final long TAPE_BEYOND_GIRTH_MM = 50 + 2 * 19;

    private static final long MESH_BEYOND_GIRTH_MM = 203;

    /** Mesh beyond the girth as the house's policy proposes it. */
    private static final long PROPOSED_MESH_BEYOND_GIRTH_MM = 229;

    /** Crews say why from this much on: a little before the page would ask. */
    private static final long WORTH_A_WORD_MM = 100;

    private static final int REST_DAYS = 8;

    private final Place.Crew crew;
    private final List<Stand.Tree> trees;
    private final Dice dice;
    private final SeasonBook book;
    private final Map<Stand.Tree, LocalDate> freeFrom = new LinkedHashMap<>();

    Fitting(Place.Crew crew, List<Stand.Tree> trees, Dice dice, SeasonBook book) {
        this.crew = crew;
        this.trees = trees.stream().filter(Stand.Tree::canBeBanded).toList();
        this.dice = dice;
        this.book = book;
        this.trees.forEach(tree -> freeFrom.put(tree, LocalDate.MIN));
    }

    /** The trees of this crew that carry no band and have rested, longest rest first. */
    List<Stand.Tree> next(LocalDate day, int count) {
        List<Stand.Tree> free = new ArrayList<>(trees);
        free.removeIf(tree -> freeFrom.getOrDefault(tree, LocalDate.MIN).isAfter(day));
        free.sort((a, b) -> freeFrom.getOrDefault(a, day).compareTo(freeFrom.getOrDefault(b, day)));
        return free.subList(0, Math.min(count, free.size()));
    }

    /** Puts a band and its guard on a tree. */
    BandUp fit(Stand.Tree tree, WorkDay day, Kit kit) {
        CutLength tape = tapeFor(tree, crew, dice);
        Held reel = mustHave(kit.reelFor(Kit.TAPE, tape.mm()), Kit.TAPE, tape.mm());
        reel.cut(tape.mm());
        String kind = (tree.tag().hashCode() & 7) < 5 ? Kit.MESH : Kit.FINE_MESH;
        Cut mesh = cutMesh(tree, kind, kit);
        long pieces = piecesFor(tree);
        String bandId = book.next("B", 4);
        book.fits.add(
                bandId,
                tree.siteId(),
                tree.tag(),
                crew.crewId(),
                kit.holder,
                CutLength.of(tree.girthMm(), crew.lengths()).text(),
                crew.lengths().equals("ft-in") ? "4 ft" : dice.between(23, 26) * 50 + " mm",
                day.is(Mistakes.WRONG_NUMBER, Mistakes.WRONG_NUMBER_CREW) && !wrongNumberTyped()
                        ? Mistakes.WRONG_NUMBER_REEL
                        : reel.reelId,
                tape.text(),
                mesh.piece().reelId(),
                mesh.text(),
                kit.usePins(pieces),
                pieces,
                whyLonger(mesh, tree),
                day.after(dice.between(9, 15)),
                day.sentAt());
        freeFrom.put(tree, LocalDate.MAX);
        return new BandUp(bandId, tree, day.date, dice.between(29, 39), tape.mm(), mesh.piece(), mesh.material());
    }

    /** What a crew says of a used guard that goes further round than a fresh one would; empty for any other. */
    private static String whyLonger(Cut mesh, Stand.Tree tree) {
        long more = mesh.piece().mm() - tree.girthMm() - PROPOSED_MESH_BEYOND_GIRTH_MM;
        return more > WORTH_A_WORD_MM ? "A used guard, longer than needed; nothing is cut off a sound one." : "";
    }

    private boolean wrongNumberTyped;

    private boolean wrongNumberTyped() {
        boolean before = wrongNumberTyped;
        wrongNumberTyped = true;
        return before;
    }

    /** Mesh for a guard: a used piece that goes round if there is one, otherwise cut from a reel. */
    Cut cutMesh(Stand.Tree tree, String kind, Kit kit) {
        CutLength wanted = CutLength.of(tree.girthMm() + MESH_BEYOND_GIRTH_MM, crew.lengths());
        Kit.CutPiece used = kit.usedMesh(tree.girthMm() + 152);
        if (used != null) {
            Held from = mustHave(kit.reels.get(used.reelId()), kind, used.mm());
            return new Cut(used, used.mm() + " mm", from.material);
        }
        Held reel = mustHave(kit.reelFor(kind, wanted.mm()), kind, wanted.mm());
        reel.cut(wanted.mm());
        return new Cut(new Kit.CutPiece(reel.reelId, wanted.mm()), wanted.text(), kind);
    }

    /** The strip for a tree, with the few millimetres by which people cut too long. */
    static CutLength tapeFor(Stand.Tree tree, Place.Crew crew, Dice dice) {
        return CutLength.of(tree.girthMm() + TAPE_BEYOND_GIRTH_MM + dice.between(0, 8), crew.lengths());
    }

    /** One pin or tack per 100 mm of girth, six at least. */
    static long piecesFor(Stand.Tree tree) {
        return Math.max(6, (tree.girthMm() + 99) / 100);
    }

    /** Lets the tree rest after a teardown. */
    void free(Stand.Tree tree, LocalDate day) {
        if (freeFrom.containsKey(tree)) {
            freeFrom.put(tree, day.plusDays(REST_DAYS));
        }
    }

    static Held mustHave(@org.jspecify.annotations.Nullable Held held, String material, long mm) {
        if (held == null) {
            throw new IllegalStateException("No reel of %s in the kit with %d mm.".formatted(material, mm));
        }
        return held;
    }

    /** Mesh cut for a guard: the piece, how the crew wrote its length, the material. */
    record Cut(Kit.CutPiece piece, String text, String material) {}
}
