package org.bandtrail.local;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * One service's own database with its own user. The user owns the database and can open no other one, so that two
 * services cannot come to share a table by accident.
 *
 * @param url the JDBC address
 * @param user the user's name, which is also the database's
 * @param password the user's password
 */
public record ServiceDatabase(String url, String user, String password) {

    /**
     * Makes the database and its user unless they exist, and sets the user's password to the one in the data folder.
     *
     * @param server the running server
     * @param folder where the password is kept
     * @param name database and user; lower case letters and underscores
     * @return how to reach it
     * @throws CannotStart if it cannot be made or opened, or would not keep what it confirms
     */
    static ServiceDatabase prepared(PostgresServer server, DataFolder folder, String name) {
        if (!name.matches("[a-z_]+")) {
            throw new IllegalArgumentException("Not a database name: [" + name + "]");
        }
        ServiceDatabase database = new ServiceDatabase(server.url(name), name, folder.secret("database-" + name));
        try (Connection connection = server.connect(PostgresServer.SUPERUSER);
                Statement statement = connection.createStatement()) {
            if (!exists(statement, "SELECT 1 FROM pg_roles WHERE rolname = '" + name + "'")) {
                statement.execute("CREATE ROLE " + name + " LOGIN");
            }
            // The secret is 64 hexadecimal digits, so it needs no quoting; ALTER ROLE takes no parameters.
            statement.execute("ALTER ROLE " + name + " PASSWORD '" + database.password() + "'");
            if (!exists(statement, "SELECT 1 FROM pg_database WHERE datname = '" + name + "'")) {
                statement.execute("CREATE DATABASE " + name + " OWNER " + name);
                statement.execute("REVOKE ALL ON DATABASE " + name + " FROM PUBLIC");
            }
        } catch (SQLException e) {
            throw new CannotStart("The database " + name + " cannot be made: " + e.getMessage(), e);
        }
        database.requireDurable();
        return database;
    }

    private static boolean exists(Statement statement, String query) throws SQLException {
        try (ResultSet rows = statement.executeQuery(query)) {
            return rows.next();
        }
    }

    private void requireDurable() {
        try (Connection connection = open()) {
            DurableSettings.require(connection);
        } catch (SQLException e) {
            throw new CannotStart("The database " + user + " cannot be opened: " + e.getMessage(), e);
        }
    }

    /**
     * Opens a connection as the service's own user.
     *
     * @return the connection, to be closed by the caller
     * @throws SQLException if the server does not answer
     */
    public Connection open() throws SQLException {
        return DriverManager.getConnection(url, user, password);
    }
}
