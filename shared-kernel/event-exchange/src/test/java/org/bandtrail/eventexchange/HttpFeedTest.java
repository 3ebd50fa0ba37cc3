package org.bandtrail.eventexchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import org.bandtrail.eventexchange.notes.NotesService;
import org.springframework.context.ConfigurableApplicationContext;

/** The feed over HTTP: a real server, a real client, and a proxy between them that does the faults. */
class HttpFeedTest extends FeedTransportContract {

    @Override
    FeedTransport start(ExchangeDatabase publisher) {
        return new OverHttp(publisher);
    }

    private static final class OverHttp implements FeedTransport {
        private final ExchangeDatabase publisher;
        private final FaultyProxy proxy;
        private final Feed feed;
        private volatile ConfigurableApplicationContext service;

        OverHttp(ExchangeDatabase publisher) {
            this.publisher = publisher;
            this.service = serve();
            try {
                this.proxy = new FaultyProxy(() -> NotesService.address(service));
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
            this.feed = new HttpFeed(proxy.address(), NotesService.KEY);
        }

        @Override
        public Feed feed() {
            return feed;
        }

        @Override
        public void suffer(EnumSet<Fault> faults) {
            proxy.suffer(faults);
        }

        @Override
        public long faultsDone() {
            return proxy.faultsDone();
        }

        @Override
        public void restart() {
            service.close();
            service = serve();
        }

        @Override
        public void close() {
            proxy.close();
            service.close();
        }

        private ConfigurableApplicationContext serve() {
            return NotesService.start(
                    publisher.database, "test-notes", "bandtrail.read-feeds=false", "server.shutdown=immediate");
        }
    }
}
