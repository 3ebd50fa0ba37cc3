package org.bandtrail.testing;

import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * An empty database on the test server, and how to reach it.
 *
 * @param name of the database, unique within the server
 * @param url JDBC address
 * @param user owner of the database, a superuser of this server
 * @param password of that user
 */
public record TestDatabase(String name, String url, String user, String password) {

    /** A data source without a pool: each call to it opens a connection of its own. */
    public DataSource dataSource() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl(url);
        source.setUser(user);
        source.setPassword(password);
        return source;
    }
}
