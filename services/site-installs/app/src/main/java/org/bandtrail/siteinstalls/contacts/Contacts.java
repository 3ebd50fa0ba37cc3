package org.bandtrail.siteinstalls.contacts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The erasable table of contacts. It is written directly and is no read model: a rebuild must not bring a name back.
 */
@Repository
public class Contacts {
    private final JdbcClient jdbc;

    Contacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Writes down a contact, or corrects what is known; an erased contact stays erased. */
    public void keep(ContactId contactId, ContactDetails details) {
        jdbc.sql("""
                        INSERT INTO consent_contact (contact_id, name, phone, email, address)
                        VALUES (?, ?, ?, ?, ?)
                        ON CONFLICT (contact_id) DO UPDATE SET name = EXCLUDED.name, phone = EXCLUDED.phone,
                            email = EXCLUDED.email, address = EXCLUDED.address
                        WHERE consent_contact.erased_at IS NULL""")
                .param(contactId.value())
                .param(details.name())
                .param(details.phone())
                .param(details.email())
                .param(details.address())
                .update();
    }

    /** Erases everything personal; the pseudonym stays because history names it. Twice is as once. */
    public void erase(ContactId contactId, Instant now) {
        jdbc.sql("""
                        UPDATE consent_contact SET name = '', phone = '', email = '', address = '', erased_at = ?
                        WHERE contact_id = ? AND erased_at IS NULL""")
                .param(now.atOffset(ZoneOffset.UTC))
                .param(contactId.value())
                .update();
    }

    /** The contact, empty if it was never written down. */
    public Optional<Contact> find(ContactId contactId) {
        return jdbc.sql("SELECT * FROM consent_contact WHERE contact_id = ?")
                .param(contactId.value())
                .query(Contacts::row)
                .optional();
    }

    private static Contact row(ResultSet row, int number) throws SQLException {
        @Nullable OffsetDateTime erased = row.getObject("erased_at", OffsetDateTime.class);
        return new Contact(
                row.getString("contact_id"),
                row.getString("name"),
                row.getString("phone"),
                row.getString("email"),
                row.getString("address"),
                erased == null ? null : erased.toInstant());
    }
}
