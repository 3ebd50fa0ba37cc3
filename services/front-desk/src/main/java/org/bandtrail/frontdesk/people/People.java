package org.bandtrail.frontdesk.people;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bandtrail.frontdesk.wording.Units;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The table of people. */
@Repository
public class People {
    private static final String SELECT = """
            SELECT p.person_id, p.display_name, p.phone, p.username, p.units, p.theme, p.erased,
                   ARRAY(SELECT r.role FROM person_role r WHERE r.person_id = p.person_id ORDER BY r.role) AS roles
              FROM person p
            """;
    private final JdbcClient jdbc;

    People(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Everybody, by name. */
    public List<Person> all() {
        return jdbc.sql(SELECT + " ORDER BY p.display_name, p.person_id")
                .query(People::person)
                .list();
    }

    /** Names by identity, for whole pages. */
    public Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        jdbc.sql("SELECT person_id, display_name FROM person")
                .query((row, index) -> names.put(row.getString(1), row.getString(2)))
                .list();
        return names;
    }

    /** The person with this identity. */
    public Optional<Person> find(String personId) {
        return jdbc.sql(SELECT + " WHERE p.person_id = ?")
                .param(personId)
                .query(People::person)
                .optional();
    }

    Optional<Person> signingInAs(String username) {
        return jdbc.sql(SELECT + " WHERE p.username = ?")
                .param(username)
                .query(People::person)
                .optional();
    }

    @Nullable
    String passwordHash(String personId) {
        return jdbc.sql("SELECT password_hash FROM person WHERE person_id = ?")
                .param(personId)
                .query((row, index) -> Optional.ofNullable(row.getString(1)))
                .optional()
                .flatMap(hash -> hash)
                .orElse(null);
    }

    /** Creates the person, or brings name, phone, sign-in and roles of a known one up to date. Repeatable. */
    @Transactional
    public void save(Person person, @Nullable String passwordHash) {
        jdbc.sql("""
                INSERT INTO person (person_id, display_name, phone, username, password_hash, units, theme)
                VALUES (?, ?, ?, ?, ?, ?, ?)
                ON CONFLICT (person_id) DO UPDATE
                   SET display_name = excluded.display_name, phone = excluded.phone,
                       username = excluded.username, password_hash = excluded.password_hash, erased = false
                """)
                .params(Stream.of(
                                Optional.of(person.personId()),
                                Optional.of(person.name()),
                                Optional.ofNullable(person.phone()),
                                Optional.ofNullable(person.username()),
                                Optional.ofNullable(passwordHash),
                                Optional.of(person.units().name()),
                                Optional.of(person.theme()))
                        .map(value -> value.orElse(null))
                        .toArray())
                .update();
        jdbc.sql("DELETE FROM person_role WHERE person_id = ?")
                .param(person.personId())
                .update();
        for (Role role : person.roles()) {
            jdbc.sql("INSERT INTO person_role (person_id, role) VALUES (?, ?)")
                    .params(person.personId(), role.name())
                    .update();
        }
    }

    /** Stores how this person reads. */
    public void prefer(String personId, Units units, String theme) {
        jdbc.sql("UPDATE person SET units = ?, theme = ? WHERE person_id = ?")
                .params(units.name(), theme, personId)
                .update();
    }

    /** Forgets name, phone and sign-in for good. What the identity did stays in the books, without a name. */
    @Transactional
    public void erase(String personId) {
        jdbc.sql("""
                UPDATE person
                   SET display_name = 'former member ' || person_id, phone = NULL, username = NULL,
                       password_hash = NULL, erased = true
                 WHERE person_id = ?
                """).param(personId).update();
        jdbc.sql("DELETE FROM person_role WHERE person_id = ?").param(personId).update();
    }

    private static Person person(ResultSet row, int index) throws SQLException {
        return new Person(
                row.getString("person_id"),
                row.getString("display_name"),
                row.getString("phone"),
                row.getString("username"),
                Units.valueOf(row.getString("units")),
                row.getString("theme"),
                row.getBoolean("erased"),
                roles(row.getArray("roles")));
    }

    private static List<Role> roles(Array array) throws SQLException {
        return Stream.of((String[]) array.getArray()).map(Role::valueOf).toList();
    }
}
