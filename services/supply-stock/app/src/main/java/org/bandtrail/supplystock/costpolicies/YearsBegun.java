package org.bandtrail.supplystock.costpolicies;

/** Knows which years have entries; whoever keeps the entries declares one bean of this type. */
public interface YearsBegun {
    /** Whether any entry posts to this calendar year of UTC. */
    boolean begun(int year);
}
