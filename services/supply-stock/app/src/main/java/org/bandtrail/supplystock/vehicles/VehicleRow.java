package org.bandtrail.supplystock.vehicles;

/**
 * One vehicle as people see it.
 *
 * @param depotId where it belongs
 * @param reels how many reels are on it
 * @param mm millimetres on them together
 * @param pieces fasteners on it
 */
public record VehicleRow(String vehicleId, String name, String depotId, long reels, long mm, long pieces) {}
