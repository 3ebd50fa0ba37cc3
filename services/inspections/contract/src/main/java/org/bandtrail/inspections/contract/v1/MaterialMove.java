package org.bandtrail.inspections.contract.v1;

/**
 * One quantity of one reel or batch that went from one place to another. A place is written {@code kind:id}:
 * {@code crew:<person>}, {@code tree:<tree>}, {@code bag:<bag>}, {@code disposed:<load>}.
 *
 * @param material {@code reel} (quantity in millimetres) or {@code batch} (quantity in pieces)
 * @param id the reel's or batch's identity
 * @param quantity millimetres or pieces, above 0
 * @param source where it was, for example {@code crew:P-07}
 * @param target where it is now, for example {@code tree:T-0001}
 */
public record MaterialMove(String material, String id, long quantity, String source, String target) {}
