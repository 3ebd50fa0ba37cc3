package org.bandtrail.frontdesk.pages;

import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.jspecify.annotations.Nullable;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;

/**
 * What somebody typed into a form, and what the service said to it. A form that comes back shows everything typed.
 *
 * @param problem why the form came back, or null for a fresh form
 */
public record Entered(
        MultiValueMap<String, String> values, @Nullable Problem problem) {

    /** A fresh form with some fields already filled. */
    public static Entered fresh(Map<String, String> filled) {
        MultiValueMap<String, String> values = new LinkedMultiValueMap<>();
        filled.forEach(values::add);
        return new Entered(values, null);
    }

    /** The same form, come back with what was typed and the reason. */
    public static Entered again(MultiValueMap<String, String> values, Problem problem) {
        return new Entered(values, problem);
    }

    /** Does the work of a form; if it is refused, returns the form as it came, with the reason. */
    public static Optional<Entered> unlessDone(MultiValueMap<String, String> sent, Runnable work) {
        try {
            work.run();
            return Optional.empty();
        } catch (NeighbourRefused refused) {
            return Optional.of(again(sent, refused.problem()));
        } catch (PleaseConfirm asked) {
            return Optional.of(again(sent, asked.problem()));
        } catch (UnfitForm | DateTimeParseException unfit) {
            String why = String.valueOf(unfit.getMessage());
            return Optional.of(again(sent, unfit("The form cannot be sent like this", why)));
        }
    }

    /** A form that cannot be sent as it is, with what to do about it. */
    public static Problem unfit(String title, String detail) {
        return new Problem("/problems/form-incomplete", title, 422, detail, List.of());
    }

    /** The text of a field, or empty. */
    public String value(String field) {
        String value = values.getFirst(field);
        return value == null ? "" : value;
    }

    /** The text of a field, or the other text if it is empty. */
    public String or(String field, @Nullable Object otherwise) {
        String value = value(field);
        return !value.isEmpty() ? value : otherwise == null ? "" : otherwise.toString();
    }

    /** All texts of a field that occurs several times. */
    public List<String> all(String field) {
        return values.getOrDefault(field, List.of());
    }

    /** Tells whether a checkbox or radio button of this name had this value. */
    public boolean chose(String field, String value) {
        return all(field).contains(value);
    }

    /** The text of a field in the line in which another field has this value, or empty. */
    public String beside(String key, String value, String field) {
        return line(field, all(key).indexOf(value));
    }

    /** The text of the field with this index among several of one name, or empty. */
    public String line(String field, int index) {
        List<String> texts = all(field);
        return index >= 0 && index < texts.size() ? texts.get(index) : "";
    }
}
