package org.bandtrail.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The server all database tests stand on: careful with its disk, new enough, and one database for each who asks. */
class PostgresForTestsTest {

    private static String ask(TestDatabase database, String sql) throws SQLException {
        try (Connection connection = database.dataSource().getConnection();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            return rows.getString(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"fsync", "synchronous_commit", "full_page_writes"})
    void the_server_waits_for_its_disk(String setting) throws SQLException {
        TestDatabase database = PostgresForTests.freshDatabase("settings");

        assertThat(ask(database, "SELECT current_setting('%s')".formatted(setting)))
                .isEqualTo("on");
    }

    @Test
    void the_server_is_of_a_supported_release() throws SQLException {
        TestDatabase database = PostgresForTests.freshDatabase("release");

        assertThat(Integer.parseInt(ask(database, "SELECT current_setting('server_version_num')")))
                .isGreaterThanOrEqualTo(150_000);
        assertThat(PostgresForTests.whichAndWhy()).contains("because");
    }

    @Test
    void two_databases_of_one_name_are_two_and_empty() throws SQLException {
        TestDatabase first = PostgresForTests.freshDatabase("Reel-Balances");
        TestDatabase second = PostgresForTests.freshDatabase("Reel-Balances");
        try (Connection connection = first.dataSource().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE reel (mm bigint)");
        }

        assertThat(first.name()).startsWith("reel_balances_").isNotEqualTo(second.name());
        assertThat(ask(first, "SELECT to_regclass('reel')")).isEqualTo("reel");
        assertThat(ask(second, "SELECT to_regclass('reel')")).isNull();
    }

    @Test
    void long_names_stay_unique() {
        String tooLong = "a".repeat(80);

        assertThat(PostgresForTests.freshDatabase(tooLong).name())
                .isNotEqualTo(PostgresForTests.freshDatabase(tooLong).name())
                .hasSizeLessThanOrEqualTo(63);
    }
}
