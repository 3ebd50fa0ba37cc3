package org.bandtrail.siteinstalls.cuttingstock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import org.bandtrail.siteinstalls.cuttingstock.search.CutTask;
import org.bandtrail.siteinstalls.cuttingstock.search.Layout;

/** A job as the search sees it, and the way back from its answer to pieces and reels. */
final class JobAsTask {
    private final CuttingRules rules;
    private final List<Stock> stock;
    private final List<List<Piece>> kinds = new ArrayList<>();
    private final CutTask task;

    /** {@code pieces}: those that fit on some reel of the stock. */
    JobAsTask(List<Piece> pieces, List<Stock> stock, CuttingRules rules) {
        this.rules = rules;
        this.stock = stock;
        TreeMap<Long, List<Piece>> byLength = new TreeMap<>(Comparator.reverseOrder());
        for (Piece piece : pieces) {
            byLength.computeIfAbsent(piece.lengthMm(), length -> new ArrayList<>())
                    .add(piece);
        }
        kinds.addAll(byLength.values());
        int blade = Math.toIntExact(rules.bladeMm());
        this.task = CutTask.of(
                kinds.stream()
                        .mapToInt(kind -> Math.toIntExact(kind.getFirst().lengthMm()) + blade)
                        .toArray(),
                kinds.stream().mapToInt(List::size).toArray(),
                stock.stream()
                        .mapToInt(reel -> Math.toIntExact(reel.lengthMm()))
                        .toArray(),
                fresh(stock),
                ages(stock),
                blade,
                Math.toIntExact(Math.max(1, rules.usableFromMm())),
                Math.toIntExact(rules.openingWorthMm()));
    }

    CutTask task() {
        return task;
    }

    private static boolean[] fresh(List<Stock> stock) {
        boolean[] fresh = new boolean[stock.size()];
        for (int i = 0; i < fresh.length; i++) {
            fresh[i] = !stock.get(i).opened();
        }
        return fresh;
    }

    /** Earliest expiry first, what keeps last, and of equals what was bought first. */
    private static int[] ages(List<Stock> stock) {
        Comparator<Stock> use = Comparator.comparing(Stock::expires, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Stock::costOrder)
                .thenComparing(Stock::id);
        List<Stock> inOrder = stock.stream().sorted(use).toList();
        TreeMap<String, Integer> places = new TreeMap<>();
        for (int i = 0; i < inOrder.size(); i++) {
            places.put(inOrder.get(i).id(), i);
        }
        return stock.stream()
                .mapToInt(reel -> places.getOrDefault(reel.id(), 0))
                .toArray();
    }

    /** The pieces of a layout on their reels: of equal pieces the earlier ones in the job go to the earlier reel. */
    List<ReelCuts> reels(Layout layout, List<Piece> order) {
        List<Deque<Piece>> waiting = waiting();
        List<ReelCuts> cuts = new ArrayList<>();
        Comparator<Piece> asInJob = byPlace(order);
        for (int reel = 0; reel < stock.size(); reel++) {
            List<Piece> on = new ArrayList<>();
            for (int kind : layout.on(reel)) {
                on.add(waiting.get(kind).removeFirst());
            }
            if (!on.isEmpty()) {
                on.sort(asInJob);
                cuts.add(cut(stock.get(reel), on));
            }
        }
        return cuts;
    }

    /** Of each kind the last pieces of the job are those left uncut. */
    List<Piece> uncut(Layout layout, List<Piece> order) {
        List<Deque<Piece>> waiting = waiting();
        List<Piece> uncut = new ArrayList<>();
        for (int kind : layout.uncut()) {
            uncut.add(waiting.get(kind).removeLast());
        }
        uncut.sort(byPlace(order));
        return uncut;
    }

    private List<Deque<Piece>> waiting() {
        List<Deque<Piece>> waiting = new ArrayList<>();
        kinds.forEach(kind -> waiting.add(new ArrayDeque<>(kind)));
        return waiting;
    }

    private static Comparator<Piece> byPlace(List<Piece> order) {
        TreeMap<String, Integer> places = new TreeMap<>();
        for (int i = 0; i < order.size(); i++) {
            places.put(order.get(i).id(), i);
        }
        return Comparator.comparing(piece -> places.getOrDefault(piece.id(), 0));
    }

    private ReelCuts cut(Stock reel, List<Piece> on) {
        long pieces = on.stream().mapToLong(Piece::lengthMm).sum();
        long behind = reel.lengthMm() - pieces - (on.size() - 1) * rules.bladeMm();
        long lastCut = Math.min(behind, rules.bladeMm());
        long rest = behind - lastCut;
        boolean usable = rest >= Math.max(1, rules.usableFromMm());
        return new ReelCuts(
                reel.id(), on, usable ? rest : 0, usable ? 0 : rest, (on.size() - 1) * rules.bladeMm() + lastCut);
    }
}
