package org.bandtrail.testing.broken.purity.reels;

import java.sql.Connection;
import java.sql.SQLException;
import org.springframework.stereotype.Component;

/** Decides by asking the database, which no decision may. */
@Component
public class Reel {
    long decide(ReelBalances balances, Connection connection) throws SQLException {
        return balances.rows(connection);
    }
}
