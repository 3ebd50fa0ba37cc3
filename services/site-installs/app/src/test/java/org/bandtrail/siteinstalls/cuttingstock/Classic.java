package org.bandtrail.siteinstalls.cuttingstock;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Scanner;

/** Classic jobs: equal reels, nothing goes back, as few reels as possible. */
final class Classic {

    private Classic() {}

    /** {@code pairs}: length, count, length, count... */
    static CuttingJob job(long reelMm, int reels, long... pairs) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            for (int j = 0; j < pairs[i + 1]; j++) {
                pieces.add(new Piece("p" + pieces.size(), pairs[i]));
            }
        }
        return of(pieces, reelMm, reels);
    }

    /** A file of {@code src/test/resources/cutting}: count, capacity, then the items. */
    static CuttingJob file(String name) {
        try (InputStream in = Objects.requireNonNull(Classic.class.getResourceAsStream("/cutting/" + name), name);
                Scanner numbers = new Scanner(in, StandardCharsets.US_ASCII)) {
            int count = numbers.nextInt();
            long capacity = numbers.nextLong();
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                pieces.add(new Piece("p" + i, numbers.nextLong()));
            }
            return of(pieces, capacity, count);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static CuttingJob of(List<Piece> pieces, long reelMm, int reels) {
        List<Stock> stock = new ArrayList<>();
        for (int i = 0; i < reels; i++) {
            stock.add(new Stock("reel-" + i, reelMm, false, null, i));
        }
        return new CuttingJob(pieces, stock, new CuttingRules(0, Integer.MAX_VALUE, reelMm), 1);
    }
}
