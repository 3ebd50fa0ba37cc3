package org.bandtrail.benchmark.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.bandtrail.siteinstalls.cuttingstock.CuttingJob;
import org.bandtrail.siteinstalls.cuttingstock.CuttingRules;
import org.bandtrail.siteinstalls.cuttingstock.Piece;
import org.bandtrail.siteinstalls.cuttingstock.Stock;

/** Kinds of jobs; each makes a job from a number of pieces, a number of part reels and a seed. */
enum JobClass {
    /** Tape for a walk: girths of 480 to 2,600 mm with overlap, to 5 mm; part reels to 25 m; rests from 560 mm keep. */
    TAPE {
        @Override
        void fill(Draft draft, int pieces, int parts) {
            for (int i = 0; i < pieces; i++) {
                draft.piece(5L * draft.between(112, 536));
            }
            for (int i = 0; i < parts; i++) {
                draft.part(draft.between(1_000, 25_000));
            }
            draft.fresh(25_000);
            draft.rules = new CuttingRules(0, 560, 25_000);
        }
    },
    /** Mesh, cut with a blade of 3 mm, part reels hardly longer than two or three pieces. */
    MESH {
        @Override
        void fill(Draft draft, int pieces, int parts) {
            for (int i = 0; i < pieces; i++) {
                draft.piece(draft.between(700, 2_900));
            }
            for (int i = 0; i < parts; i++) {
                draft.part(draft.between(1_500, 8_000));
            }
            draft.fresh(15_000);
            draft.rules = new CuttingRules(3, 700, 15_000);
        }
    },
    /** Triplets: three pieces fill each reel exactly, and nothing else is known to; no rest keeps. */
    TRIPLET {
        @Override
        void fill(Draft draft, int pieces, int parts) {
            int reels = 0;
            for (int i = 0; i + 2 < pieces; i += 3) {
                long reel = reels < parts ? draft.between(4_000, 8_000) : 6_000;
                long first = draft.between(reel * 38 / 100, reel * 45 / 100);
                long second = draft.between(reel * 25 / 100, reel * 30 / 100);
                draft.piece(first);
                draft.piece(second);
                draft.piece(reel - first - second);
                if (reels++ < parts) {
                    draft.part(reel);
                }
            }
            for (; reels < parts; reels++) {
                draft.part(draft.between(4_000, 8_000));
            }
            draft.fresh(6_000);
            draft.rules = new CuttingRules(0, CuttingJob.LONGEST_MM, 6_000);
        }
    },
    /** Pieces near half a reel, where two fit or just do not; no rest keeps. */
    NEAR_HALF {
        @Override
        void fill(Draft draft, int pieces, int parts) {
            for (int i = 0; i < pieces; i++) {
                draft.piece(draft.between(2_100, 2_900));
            }
            for (int i = 0; i < parts; i++) {
                draft.part(draft.between(4_700, 5_300));
            }
            draft.fresh(5_000);
            draft.rules = new CuttingRules(0, CuttingJob.LONGEST_MM, 5_000);
        }
    },
    /** Lengths all over, up to two thirds of a reel, and no rest keeps: with equal new reels the classic problem. */
    CLASSIC {
        @Override
        void fill(Draft draft, int pieces, int parts) {
            for (int i = 0; i < pieces; i++) {
                draft.piece(10L * draft.between(80, 400));
            }
            for (int i = 0; i < parts; i++) {
                draft.part(10L * draft.between(300, 600));
            }
            draft.fresh(6_000);
            draft.rules = new CuttingRules(0, CuttingJob.LONGEST_MM, 6_000);
        }
    };

    abstract void fill(Draft draft, int pieces, int parts);

    /** The job of this class with this seed; new reels suffice for all pieces. */
    CuttingJob job(int pieces, int parts, long seed) {
        long mixed = seed * 1_000_003 + ordinal() * 7_919L + pieces * 31L + parts;
        Draft draft = new Draft(RandomGeneratorFactory.of("L64X128MixRandom").create(mixed));
        fill(draft, pieces, parts);
        return draft.job(seed);
    }

    /** A job in the making. */
    static final class Draft {
        private final RandomGenerator random;
        private final List<Long> lengths = new ArrayList<>();
        private final List<Stock> stock = new ArrayList<>();
        private CuttingRules rules = new CuttingRules(0, 0, 0);
        private long freshMm;

        Draft(RandomGenerator random) {
            this.random = random;
        }

        long between(long least, long most) {
            return random.nextLong(least, most + 1);
        }

        void piece(long lengthMm) {
            lengths.add(lengthMm);
        }

        void part(long lengthMm) {
            stock.add(new Stock("part-" + stock.size(), lengthMm, true, null, stock.size()));
        }

        void fresh(long lengthMm) {
            this.freshMm = lengthMm;
        }

        CuttingJob job(long seed) {
            Collections.shuffle(lengths, random);
            List<Piece> pieces = new ArrayList<>();
            for (long length : lengths) {
                pieces.add(new Piece("piece-" + pieces.size(), length));
            }
            // even with half of every reel wasted, and no part reel used, these suffice
            long wanted = lengths.stream().mapToLong(Long::longValue).sum();
            for (long held = 0; held <= 2 * wanted; held += freshMm) {
                stock.add(new Stock("new-" + stock.size(), freshMm, false, null, stock.size()));
            }
            return new CuttingJob(pieces, stock, rules, seed);
        }
    }
}
