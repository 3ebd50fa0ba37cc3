package org.bandtrail.inspections.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialKind;
import org.jspecify.annotations.Nullable;

/**
 * The way of one portion through the places of this service: with the person, on the tree, in a bag or with a person
 * again. A fitted piece begins on the tree, because its first move is told by site-installs.
 */
final class Track {
    /** A place and the fact that brought the portion there. */
    record Stop(String place, PieceFact cause) {}

    private final Portion portion;
    private final List<Stop> stops = new ArrayList<>();

    private Track(Portion portion) {
        this.portion = portion;
    }

    /**
     * Works out the way of every portion these facts put up. While no fitting is known nobody knows the tree, and every
     * portion is left with the person.
     */
    static Map<String, Track> of(List<PieceFact> facts) {
        Map<String, Track> tracks = new TreeMap<>();
        List<Track> hanging = new ArrayList<>();
        Trunk trunk = null;
        for (PieceFact fact : inOrder(facts)) {
            trunk = fact.trunk() == null ? trunk : fact.trunk();
            if (trunk != null) {
                takeOff(fact, hanging);
            }
            for (int i = 0; i < fact.putUp().size(); i++) {
                Track track = putUp(fact, fact.putUp().get(i), trunk);
                tracks.put(fact.id() + "#" + i, track);
                hanging.add(track);
            }
        }
        return tracks;
    }

    /** A band is fitted before anything else can be done with it, whatever the clocks say. */
    private static List<PieceFact> inOrder(List<PieceFact> facts) {
        List<PieceFact> order = new ArrayList<>(facts);
        order.sort(PieceFact.BY_TIME);
        order.stream()
                .filter(fact -> fact.kind() == PieceFact.Kind.FITTED)
                .findFirst()
                .ifPresent(first -> {
                    order.remove(first);
                    order.addFirst(first);
                });
        return order;
    }

    private static void takeOff(PieceFact fact, List<Track> hanging) {
        for (Track track : List.copyOf(hanging)) {
            String place = fact.takenOff().get(track.kind());
            if (place != null) {
                track.stops.add(new Stop(place, fact));
                hanging.remove(track);
            }
        }
    }

    private static Track putUp(PieceFact fact, Portion portion, @Nullable Trunk trunk) {
        Track track = new Track(portion);
        if (fact.kind() != PieceFact.Kind.FITTED) {
            track.stops.add(new Stop(Places.crew(fact.person()), fact));
        }
        if (trunk != null) {
            track.stops.add(new Stop(Places.tree(trunk.tree()), fact));
        }
        return track;
    }

    private MaterialKind kind() {
        return portion.kind();
    }

    Portion portion() {
        return portion;
    }

    List<Stop> stops() {
        return stops;
    }

    /** Tells whether the portion hangs on a tree. */
    boolean hangs() {
        return stops.getLast().place().startsWith("tree:");
    }
}
