package org.bandtrail.eventstore;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import javax.sql.DataSource;

/** Writers of the table diary that dawdle between insert and commit and roll back now and then, from a seed. */
record DiaryWriters(DataSource dataSource) {
    private static final int TRANSACTIONS = 60;

    /** One writer: returns how many of its transactions it rolled back itself. */
    Callable<Integer> writing(Random random, ConcurrentLinkedQueue<String> committed) {
        return () -> {
            int rolledBack = 0;
            for (int i = 0; i < TRANSACTIONS; i++) {
                try (Connection connection = begun()) {
                    List<String> lines = writeSome(connection, random);
                    if (random.nextInt(4) == 0) {
                        connection.rollback();
                        rolledBack++;
                    } else {
                        connection.commit();
                        committed.addAll(lines);
                    }
                } catch (SQLException conflict) {
                    // Another writer took the step: as with two commands on one aggregate, this one gives up.
                    assertThat(conflict.getSQLState()).isIn("23505", "40P01");
                }
            }
            return rolledBack;
        };
    }

    private static List<String> writeSome(Connection connection, Random random) throws SQLException {
        List<String> lines = new ArrayList<>();
        String subject = "subject-" + random.nextInt(3);
        int step = lastStep(connection, subject);
        for (int row = random.nextInt(3); row >= 0; row--) {
            step++;
            insert(connection, subject, step);
            lines.add(subject + "#" + step);
            dawdle(random);
        }
        return lines;
    }

    private static int lastStep(Connection connection, String subject) throws SQLException {
        try (var query = connection.prepareStatement("SELECT coalesce(max(step), 0) FROM diary WHERE subject = ?")) {
            query.setString(1, subject);
            try (var result = query.executeQuery()) {
                result.next();
                return result.getInt(1);
            }
        }
    }

    static void insert(Connection connection, String subject, int step) throws SQLException {
        try (var insert = connection.prepareStatement("INSERT INTO diary (subject, step) VALUES (?, ?)")) {
            insert.setString(1, subject);
            insert.setInt(2, step);
            insert.executeUpdate();
        }
    }

    private static void dawdle(Random random) {
        try {
            Thread.sleep(random.nextInt(8));
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    Connection begun() throws SQLException {
        Connection connection = dataSource.getConnection();
        connection.setAutoCommit(false);
        try (Statement patience = connection.createStatement()) {
            patience.execute("SET LOCAL statement_timeout = '20s'");
        }
        return connection;
    }
}
