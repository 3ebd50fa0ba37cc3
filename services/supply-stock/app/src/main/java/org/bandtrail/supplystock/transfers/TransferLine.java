package org.bandtrail.supplystock.transfers;

/**
 * What one reel or batch of a transfer had on it when it was sent.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id identity of the reel or batch
 * @param quantity millimetres or pieces
 */
public record TransferLine(String holding, String id, long quantity) {}
