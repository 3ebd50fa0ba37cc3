package org.bandtrail.supplystock.audits;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.supplystock.discrepancies.Finding;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Runs the audit. Call it in one transaction of level repeatable read, so that all sides see the same moment.
 */
@Component
public class Auditor {
    private final BookSumsReads reads;

    Auditor(BookSumsReads reads) {
        this.reads = reads;
    }

    /**
     * The laws and the findings.
     *
     * @param recount whether every row is counted again, instead of trusting the sums that are kept
     */
    public Audit audit(Instant now, boolean recount, List<Finding> findings) {
        BookSums reels = reads.kept("reel");
        BookSums batches = reads.kept("batch");
        Audit.@Nullable Recounted recounted = null;
        if (recount) {
            BookSums countedReels = reads.counted("reel");
            BookSums countedBatches = reads.counted("batch");
            List<Law> sums = new ArrayList<>();
            sums.addAll(Recount.of("Reels", "mm", reels, countedReels));
            sums.addAll(Recount.of("Batches", "pieces", batches, countedBatches));
            sums.addAll(Recount.places("Reels", reads.fingerprints("reel", false), reads.fingerprints("reel", true)));
            sums.addAll(
                    Recount.places("Batches", reads.fingerprints("batch", false), reads.fingerprints("batch", true)));
            recounted = new Audit.Recounted(countedReels.moves() + countedBatches.moves(), lines(sums));
            reels = countedReels;
            batches = countedBatches;
        }
        List<Audit.Line> laws = lines(Laws.of(reels, batches));
        return new Audit(now, holds(laws) && (recounted == null || holds(recounted.sums())), laws, findings, recounted);
    }

    private static List<Audit.Line> lines(List<Law> laws) {
        return laws.stream().map(Audit.Line::of).toList();
    }

    private static boolean holds(List<Audit.Line> lines) {
        return lines.stream().allMatch(line -> line.difference() == 0);
    }
}
