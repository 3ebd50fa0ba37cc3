package org.bandtrail.supplystock.depots;

/** One depot as people see it. */
public record DepotRow(String depotId, String name) {}
