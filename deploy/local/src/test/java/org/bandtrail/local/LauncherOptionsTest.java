package org.bandtrail.local;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LauncherOptionsTest {

    private static final Path HOME = Path.of("/project");

    @Test
    void without_arguments_the_season_is_loaded_and_the_data_is_kept_in_the_project_folder() {
        LauncherOptions options = LauncherOptions.parse(HOME);
        assertThat(options.data()).isEqualTo(Path.of("/project/.data"));
        assertThat(options.season()).isTrue();
        assertThat(options.stopAfterLoad()).isFalse();
        assertThat(options.ports().of(Service.FRONT_DESK)).isEqualTo(8100);
        assertThat(options.ports().of(Service.INSPECTIONS)).isEqualTo(8103);
    }

    @Test
    void every_argument_changes_its_own_thing_only() {
        LauncherOptions options = LauncherOptions.parse(
                HOME, "--empty", "--data", "/elsewhere", "--ports", "9000,9001, 9002,0", "--stop-after-load");
        assertThat(options.season()).isFalse();
        assertThat(options.stopAfterLoad()).isTrue();
        assertThat(options.data()).isEqualTo(Path.of("/elsewhere"));
        assertThat(options.demoData()).isEqualTo(Path.of("/project/demo-data"));
        assertThat(options.ports().of(Service.SUPPLY_STOCK)).isEqualTo(9001);
        assertThat(options.ports().of(Service.INSPECTIONS)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--season        | The argument [--season] is not known",
                "--ports 1,2,3   | needs four numbers",
                "--ports 1,2,3,x | [x] is not a port",
                "--ports 1,2,3,65536 | [65536] is not a port",
                "--data          | --data needs a value",
                "--data --empty  | --data needs a value"
            })
    void an_argument_that_is_not_understood_is_refused_with_advice(String arguments, String advice) {
        assertThatThrownBy(() -> LauncherOptions.parse(HOME, arguments.split(" ")))
                .isInstanceOf(CannotStart.class)
                .hasMessageContaining(advice);
    }

    @Test
    void a_port_in_use_is_named_with_its_service() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Ports ports = Ports.parse("0,0," + taken.getLocalPort() + ",0");
            assertThatThrownBy(ports::claimed)
                    .isInstanceOf(CannotStart.class)
                    .hasMessageContaining("Port " + taken.getLocalPort() + " for site-installs is in use");
        }
    }

    @Test
    void a_zero_becomes_a_free_port_and_no_two_services_get_the_same() {
        Ports ports = Ports.parse("0,0,0,0").claimed();
        assertThat(ports.byService().values()).doesNotContain(0).doesNotHaveDuplicates();
    }
}
