package org.bandtrail.testing.broken.purity.reels;

import java.sql.Connection;
import java.sql.SQLException;
import org.springframework.stereotype.Component;

/** A read model, which may hold SQL. */
@Component
public class ReelBalances {
    /** Rows. */
    public long rows(Connection connection) throws SQLException {
        return connection.getHoldability();
    }
}
