package org.bandtrail.supplystock.landedcosts;

/** What a landed cost is (IAS 2.11: transport, handling, import duties and other taxes that nobody gives back). */
public enum LandedKind {
    /** Carriage and handling. */
    FREIGHT,
    /** Customs duty, and taxes that are not recovered. */
    DUTY
}
