package org.bandtrail.local;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/**
 * The three settings without which PostgreSQL may lose what it has confirmed when the power fails. They are read
 * through {@code current_setting} on a connection like the ones the services use, because a database or a user can
 * carry a setting of its own that overrides the server's.
 */
final class DurableSettings {

    private static final List<String> NAMES = List.of("fsync", "synchronous_commit", "full_page_writes");

    private DurableSettings() {}

    /**
     * Asks the server and refuses to go on if a confirmed entry could be lost.
     *
     * @param connection an open connection
     * @throws SQLException if the server does not answer
     * @throws CannotStart if one of the settings is not on
     */
    static void require(Connection connection) throws SQLException {
        for (String name : NAMES) {
            String value = setting(connection, name);
            if (!"on".equals(value)) {
                throw new CannotStart("PostgreSQL has " + name + " = " + value + " for user "
                        + connection.getMetaData().getUserName() + " in database " + connection.getCatalog()
                        + ": entries that were confirmed could be lost when the power fails. Set it to on.");
            }
        }
    }

    private static String setting(Connection connection, String name) throws SQLException {
        try (PreparedStatement ask = connection.prepareStatement("SELECT current_setting(?)")) {
            ask.setString(1, name);
            try (ResultSet answer = ask.executeQuery()) {
                answer.next();
                return answer.getString(1);
            }
        }
    }
}
