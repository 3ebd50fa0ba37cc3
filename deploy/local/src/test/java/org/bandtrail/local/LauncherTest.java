package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher as a person uses it: start, stop, start again, and the ways in which that can go wrong. */
class LauncherTest {

    private static final String DEPOT = """
            {"commandId": "01930000-0000-7000-8000-00000000000a", "depotId": "D-NORTH", "name": "North yard"}""";

    @TempDir
    Path root;

    private final List<String> said = new ArrayList<>();

    @Test
    void all_services_start_each_with_its_own_guard_and_know_after_a_restart_what_they_were_told() {
        try (House house = House.start(options(), said::add)) {
            for (Service service : Service.values()) {
                assertThat(calls(house, service).get("/actuator/health").body()).contains("UP");
            }
            assertThat(calls(house, Service.SUPPLY_STOCK).post("/depots", DEPOT).status())
                    .isBetween(200, 201);
        }
        try (House house = House.start(options(), said::add)) {
            assertThat(calls(house, Service.SUPPLY_STOCK).get("/depots").body()).contains("North yard");
            assertThat(calls(house, Service.FRONT_DESK).getWithoutKey("/").status())
                    .isBetween(302, 303);
            for (Service service : List.of(Service.SUPPLY_STOCK, Service.SITE_INSTALLS, Service.INSPECTIONS)) {
                assertThat(calls(house, service).getWithoutKey("/feed").status())
                        .isEqualTo(401);
                assertThat(calls(house, service).get("/feed").status()).isEqualTo(200);
                assertThat(house.context(service).getBeanDefinitionNames()).doesNotContain("springSecurityFilterChain");
            }
            assertThat(house.context(Service.FRONT_DESK).getBeanDefinitionNames())
                    .contains("springSecurityFilterChain");
        }
        assertThat(said)
                .filteredOn(line -> line.startsWith("Making a new database cluster"))
                .hasSize(1);
    }

    @Test
    void ctrl_c_stops_everything_in_order_and_the_next_start_finds_nothing_left_over() throws Exception {
        Process launcher = process();
        waitForWelcome(launcher);
        new ProcessBuilder("kill", "-INT", String.valueOf(launcher.pid()))
                .start()
                .waitFor();
        assertThat(launcher.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(output()).contains("Stopped. The data stays in " + root.resolve("data"));
        assertThat(root.resolve("data/postgres/postmaster.pid")).doesNotExist();
    }

    @Test
    void after_a_kill_the_next_start_stops_the_left_over_server_says_so_and_has_the_data() throws Exception {
        Process launcher = process();
        waitForWelcome(launcher);
        launcher.destroyForcibly().waitFor();
        assertThat(root.resolve("data/postgres/postmaster.pid")).exists();
        try (House house = House.start(options(), said::add)) {
            assertThat(said).anyMatch(line -> line.startsWith("An earlier run was killed"));
            assertThat(calls(house, Service.SUPPLY_STOCK).isUp()).isTrue();
        }
    }

    private LauncherOptions options() {
        return LauncherOptions.parse(
                root, "--empty", "--data", root.resolve("data").toString(), "--ports", "0,0,0,0");
    }

    private static Calls calls(House house, Service service) {
        return new Calls(house.at(service), house.serviceKey());
    }

    private Process process() throws IOException {
        return new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-Xmx700m",
                        "-Daxoniq.update-checker.disabled=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Launcher.class.getName(),
                        "--empty",
                        "--data",
                        root.resolve("data").toString(),
                        "--ports",
                        "0,0,0,0")
                .redirectErrorStream(true)
                .redirectOutput(root.resolve("output").toFile())
                .start();
    }

    private void waitForWelcome(Process launcher) {
        Calls.waitUntil("the launcher says that it is running", Duration.ofSeconds(120), () -> {
            String output = output();
            assertThat(launcher.isAlive()).as(output).isTrue();
            return output.contains("Bandtrail is running");
        });
    }

    private String output() {
        try {
            return Files.readString(root.resolve("output"), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError("the launcher's output cannot be read", e);
        }
    }
}
