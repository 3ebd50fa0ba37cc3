package org.bandtrail.supplystock.bins;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;

/** Identity of a bin: its depot and its mark, written {@code NORTH/A-03}. */
public record BinId(@JsonValue String value) {
    /**
     * Accepts depot and mark with a stroke between.
     *
     * @throws IllegalArgumentException naming the text if it is not spelt so
     */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public BinId {
        String[] parts = value.strip().split("/", 2);
        if (parts.length != 2) {
            throw new IllegalArgumentException(
                    "Bin [%s] is not spelt depot/mark. Write one such as NORTH/A-03.".formatted(value));
        }
        value = Place.bin(new DepotId(parts[0]), parts[1]).id();
    }

    /** The bin with this mark in this depot. */
    public static BinId of(DepotId depot, String mark) {
        return new BinId(depot + "/" + mark);
    }

    /** The bin as a place of stock. */
    public Place place() {
        return new Place(PlaceKind.DEPOT, value);
    }

    /** The depot it stands in. */
    public DepotId depot() {
        return new DepotId(value.split("/", 2)[0]);
    }

    /** What is written on it. */
    public String mark() {
        return value.split("/", 2)[1];
    }

    @Override
    public String toString() {
        return value;
    }
}
