package org.bandtrail.eventexchange.notes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventexchange.Envelope;
import org.bandtrail.eventexchange.EventExchangeWiring;
import org.bandtrail.eventexchange.NoteWritten;
import org.bandtrail.eventexchange.Outbox;
import org.bandtrail.eventexchange.ReceivedHandler;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.AppendedEvent;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.EventStoreWiring;
import org.bandtrail.eventstore.WhenAppended;
import org.bandtrail.testing.TestDatabase;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.EnableAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;

/** Put together as a real service is. */
@SpringBootConfiguration(proxyBeanMethods = false)
@EnableAutoConfiguration
@Import({EventStoreWiring.class, EventExchangeWiring.class, NoteController.class})
public class NotesService {
    public static final String KEY = "only-for-this-test-0123456789";

    /** Starts the service on a free port. */
    public static ConfigurableApplicationContext start(TestDatabase database, String name, String... more) {
        return start(List.of(NotesService.class), database, name, more);
    }

    /** Starts the service with further parts. */
    static ConfigurableApplicationContext start(
            List<Class<?>> parts, TestDatabase database, String name, String... more) {
        List<String> properties = new ArrayList<>(List.of(
                "server.port=0",
                "server.address=127.0.0.1",
                "spring.threads.virtual.enabled=true",
                "spring.datasource.url=" + database.url(),
                "spring.datasource.username=" + database.user(),
                "spring.datasource.password=" + database.password(),
                "spring.flyway.locations=classpath:db/event-store,classpath:db/event-exchange",
                "spring.main.banner-mode=off",
                "bandtrail.service-name=" + name,
                "bandtrail.service-key=" + KEY));
        Collections.addAll(properties, more);
        return new SpringApplicationBuilder(parts.toArray(Class<?>[]::new))
                .web(WebApplicationType.SERVLET)
                .properties(properties.toArray(String[]::new))
                .run();
    }

    /** Where it is served. */
    public static String address(ConfigurableApplicationContext service) {
        var server = ((ServletWebServerApplicationContext) service).getWebServer();
        return "http://127.0.0.1:" + Objects.requireNonNull(server).getPort();
    }

    @Bean
    AggregateOf<?> notes() {
        return NoteAggregate.DECLARED;
    }

    @Bean
    WhenAppended publishedNotes(Outbox outbox) {
        return events -> events.forEach(event -> publish(outbox, event));
    }

    @Bean
    ReceivedHandler fromOtherNotes(Commands commands) {
        return new FromOtherNotes(commands);
    }

    private static void publish(Outbox outbox, AppendedEvent event) {
        if (event.payload() instanceof NoteEvent.Written written) {
            outbox.append(
                    event.eventId(),
                    new NoteWritten(written.noteId(), written.number(), written.text(), written.happenedAt()));
        }
    }

    /** Copies the other service's notes; fails after it has sent its command if the note says so. */
    private record FromOtherNotes(Commands commands) implements ReceivedHandler {
        @Override
        public String source() {
            return "/bandtrail/other-notes";
        }

        @Override
        public boolean handles(String type) {
            return type.equals(NoteWritten.TYPE);
        }

        @Override
        public void handle(Envelope envelope) {
            NoteWritten note = envelope.dataAs(NoteWritten.class);
            commands.send(new NoteCommand.Write("COPY-" + note.noteId(), note.text(), note.happenedAt()));
            if (note.text().equals("poison")) {
                throw new IllegalStateException("This note [%s] cannot be copied.".formatted(note.noteId()));
            }
        }
    }
}
