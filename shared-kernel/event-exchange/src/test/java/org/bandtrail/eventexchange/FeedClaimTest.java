package org.bandtrail.eventexchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.bandtrail.eventexchange.FeedReader.Step;
import org.bandtrail.eventexchange.ReadingSide.Heard;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Several replicas of one service: one of them reads a feed, and none does another's work again. */
class FeedClaimTest {
    private ExchangeDatabase publisher;
    private ReadingSide readingSide;
    private Feed feed;

    @BeforeEach
    void open() {
        publisher = new ExchangeDatabase("publishing");
        readingSide = new ReadingSide("reading");
        feed = publisher.feed();
        publisher.publish("N-1", 1);
    }

    @AfterEach
    void close() {
        readingSide.close();
        publisher.close();
    }

    @Test
    void only_one_replica_reads_and_another_takes_over_when_it_leaves_or_dies() throws InterruptedException {
        FeedPace brief = brief(400);
        FeedReader first = readingSide.reader(feed, "first", brief);
        FeedReader second = readingSide.reader(feed, "second", brief);

        assertThat(first.step()).isEqualTo(Step.MOVED);
        assertThat(second.step()).isEqualTo(Step.NOT_OURS);
        first.release();
        assertThat(second.step()).isEqualTo(Step.NOTHING_NEW);
        assertThat(first.step()).isEqualTo(Step.NOT_OURS);
        Thread.sleep(500);
        assertThat(first.step()).as("the claim of one that died runs out").isEqualTo(Step.NOTHING_NEW);
    }

    @Test
    void a_replica_that_works_longer_than_its_claim_is_waited_for_and_not_overtaken() throws InterruptedException {
        FeedPace brief = brief(100);
        FeedReader slow = readingSide.reader(feed, "slow", brief);
        FeedReader eager = readingSide.reader(feed, "eager", brief);
        CountDownLatch handling = new CountDownLatch(1);
        readingSide.then = note -> {
            handling.countDown();
            ReadingSide.sleep(600);
        };
        Thread working = Thread.ofVirtual().start(slow::step);
        handling.await();
        ReadingSide.sleep(200);

        assertThat(eager.step()).isIn(Step.NOT_OURS, Step.NOTHING_NEW);

        working.join();
        assertThat(readingSide.heard()).containsExactly(new Heard("N-1", 1));
        assertThat(readingSide.status().repeated()).isZero();
    }

    @Test
    void a_replica_that_lost_its_claim_while_it_waited_for_a_page_keeps_nothing() {
        Feed losing = (after, limit, wait) -> {
            readingSide
                    .database
                    .jdbc
                    .sql("UPDATE feed_position SET claimed_by = 'other'")
                    .update();
            return feed.after(after, limit, wait);
        };

        assertThatThrownBy(() -> readingSide.reader(losing, "replica-1").step())
                .isInstanceOf(FeedPositions.LostClaim.class);
        assertThat(readingSide.heard()).isEmpty();
        assertThat(readingSide.inboxRows()).isZero();
    }

    private static FeedPace brief(long leaseMillis) {
        return new FeedPace(
                10, Duration.ZERO, Duration.ofMillis(leaseMillis), Duration.ofMillis(10), Duration.ofMillis(50));
    }
}
