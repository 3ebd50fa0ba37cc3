package org.bandtrail.frontdesk;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers.springSecurity;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.List;
import java.util.Locale;
import org.bandtrail.frontdesk.people.People;
import org.bandtrail.frontdesk.people.Person;
import org.bandtrail.frontdesk.people.Role;
import org.bandtrail.frontdesk.people.SignedIn;
import org.bandtrail.frontdesk.wording.Units;
import org.bandtrail.testing.PostgresForTests;
import org.bandtrail.testing.TestDatabase;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

/** The real application on a real database, once per JVM, with recorded services and a person for each role. */
final class RunningDesk {
    static final String KEY = "key-of-the-services";
    private static @Nullable RunningDesk running;
    private final RecordedServices services = new RecordedServices();
    private final ConfigurableApplicationContext context;
    private final MockMvc mvc;

    private RunningDesk() {
        TestDatabase database = PostgresForTests.freshDatabase("front_desk");
        context = new SpringApplicationBuilder(FrontDeskApplication.class)
                .properties("spring.config.name=front-desk")
                .run(
                        "--server.port=0",
                        "--spring.datasource.url=" + database.url(),
                        "--spring.datasource.username=" + database.user(),
                        "--spring.datasource.password=" + database.password(),
                        "--bandtrail.service-key=" + KEY,
                        "--bandtrail.feeds.supply-stock.url=" + services.url(),
                        "--bandtrail.feeds.site-installs.url=" + services.url(),
                        "--bandtrail.feeds.inspections.url=" + services.url());
        mvc = MockMvcBuilders.webAppContextSetup((WebApplicationContext) context)
                .apply(springSecurity())
                .build();
        for (Role role : Role.values()) {
            people().save(person(role), null);
        }
    }

    /** The desk, with nothing recorded and nothing asked yet. */
    static synchronized RunningDesk fresh() {
        RunningDesk desk = running;
        if (desk == null) {
            desk = new RunningDesk();
            running = desk;
        }
        desk.services.forget();
        // Asked by many pages that are about something else.
        desk.services.answers("GET /bands/removals", 200, "{\"past\":0,\"near\":0,\"noticeDays\":14,\"source\":\"\"}");
        desk.services.answers("GET /mesh-pieces", 200, "{\"rows\":[],\"next\":null}");
        desk.services.answers("GET /devices", 200, "{\"rows\":[],\"next\":null}");
        desk.services.answers("GET /bands", 200, "{\"rows\":[],\"next\":null}");
        return desk;
    }

    RecordedServices services() {
        return services;
    }

    People people() {
        return context.getBean(People.class);
    }

    MockMvc mvc() {
        return mvc;
    }

    int port() {
        return Integer.parseInt(context.getEnvironment().getRequiredProperty("local.server.port"));
    }

    /** Reads a page as somebody of this role. */
    MockHttpServletResponse reads(Role role, String url) throws Exception {
        return mvc.perform(get(url).with(user(signedIn(role)))).andReturn().getResponse();
    }

    /** Sends a form as somebody of this role; fields come in pairs of name and value. */
    MockHttpServletResponse sends(Role role, String url, String... fields) throws Exception {
        var request = post(url).with(user(signedIn(role))).with(csrf());
        for (int index = 0; index < fields.length; index += 2) {
            request.param(fields[index], fields[index + 1]);
        }
        return mvc.perform(request).andReturn().getResponse();
    }

    static SignedIn signedIn(Role role) {
        return new SignedIn("P-" + role.name(), role.word(), "-", List.of(role), role.frontDoor());
    }

    private static Person person(Role role) {
        String name = role.name().charAt(0) + role.name().substring(1).toLowerCase(Locale.ROOT) + " Person";
        return new Person("P-" + role.name(), name, null, null, Units.SI, "auto", false, List.of(role));
    }
}
