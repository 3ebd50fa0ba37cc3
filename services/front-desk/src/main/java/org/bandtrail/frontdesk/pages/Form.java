package org.bandtrail.frontdesk.pages;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.frontdesk.wording.Days;
import org.bandtrail.kernel.Money;
import org.springframework.util.MultiValueMap;

/**
 * A sent form, read field by field into the body of a command. Blank fields are left out, a bare number of a length
 * gets the unit chosen beside it, days become instants; what a value must be is for the service to decide.
 */
public final class Form {
    private final MultiValueMap<String, String> sent;

    /** The fields as they were sent. */
    public Form(MultiValueMap<String, String> sent) {
        this.sent = sent;
    }

    /** The text of a field without surrounding blanks, or empty. */
    public String text(String field) {
        String value = sent.getFirst(field);
        return value == null ? "" : value.strip();
    }

    /** Tells whether a field was filled. */
    public boolean has(String field) {
        return !text(field).isEmpty();
    }

    /** A length as text with its unit: {@code 1250} and {@code mm} beside it become {@code 1250 mm}. */
    public String length(String field) {
        return withUnit(text(field), text(field + "Unit"));
    }

    /** A bare number with the unit chosen beside it; anything else as it was written. */
    public static String withUnit(String number, String unit) {
        return number.matches("[0-9]+([.,][0-9]+)?") ? number + " " + unit : number;
    }

    /** A whole number. */
    public long whole(String field) {
        return whole(field, text(field));
    }

    /** A whole number written in a field of this name. */
    public static long whole(String field, String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException unreadable) {
            throw new UnfitForm("%s [%s] is not a whole number. Write digits only.".formatted(field, text));
        }
    }

    /** All texts of a field that occurs several times, without the blank ones. */
    public List<String> filled(String field) {
        return sent.getOrDefault(field, List.of()).stream()
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** An identity as the services spell it: upper case, no blanks around. */
    public String identity(String field) {
        return text(field).toUpperCase(Locale.ROOT);
    }

    /** An amount in major units and the currency beside it, as minor units: {@code 12.50} and USD. */
    public Money money(String field) {
        return money(field, text(field), text(field + "Currency"));
    }

    /** An amount in major units, written in a field of this name, as minor units of a currency. */
    public static Money money(String field, String text, String currency) {
        try {
            int digits = Math.max(0, Money.zero(currency).minorDigits());
            long minor = new BigDecimal(text.replace(',', '.'))
                    .movePointRight(digits)
                    .longValueExact();
            return Money.of(minor, currency);
        } catch (ArithmeticException | IllegalArgumentException unreadable) {
            throw new UnfitForm("The %s [%s %s] is not an amount of money. Write it like 48.50 with its currency."
                    .formatted(field, text, currency));
        }
    }

    /** A body that begins with the command id of this form. */
    public Body body() {
        return new Body(this).text("commandId");
    }

    /** A body without a command id, for questions that change nothing. */
    public Body columns() {
        return new Body(this);
    }

    /** Parts of a field that occurs once per line, by line. */
    public Map<Integer, Map<String, String>> lines(String... fields) {
        Map<Integer, Map<String, String>> lines = new TreeMap<>();
        for (String field : fields) {
            List<String> values = sent.getOrDefault(field, List.of());
            for (int line = 0; line < values.size(); line++) {
                lines.computeIfAbsent(line, number -> new LinkedHashMap<>())
                        .put(field, values.get(line).strip());
            }
        }
        return lines;
    }

    /** The body of one command, built field by field. */
    public static final class Body {
        private final Form form;
        private final Map<String, Object> fields = new LinkedHashMap<>();

        Body(Form form) {
            this.form = form;
        }

        /** Copies a text if it was filled. */
        public Body text(String... names) {
            for (String name : names) {
                if (form.has(name)) {
                    fields.put(name, form.text(name));
                }
            }
            return this;
        }

        /** Copies a length if it was filled. */
        public Body length(String... names) {
            for (String name : names) {
                if (form.has(name)) {
                    fields.put(name, form.length(name));
                }
            }
            return this;
        }

        /** Copies a whole number if it was filled. */
        public Body whole(String... names) {
            for (String name : names) {
                if (form.has(name)) {
                    fields.put(name, form.whole(name));
                }
            }
            return this;
        }

        /** Copies a decimal number, such as a latitude, if it was filled. */
        public Body decimal(String... names) {
            for (String name : names) {
                if (form.has(name)) {
                    fields.put(name, decimal(name, form.text(name)));
                }
            }
            return this;
        }

        private static BigDecimal decimal(String field, String text) {
            try {
                return new BigDecimal(text.replace(',', '.'));
            } catch (NumberFormatException unreadable) {
                throw new UnfitForm("%s [%s] is not a number. Write it like 40.4421.".formatted(field, text));
            }
        }

        /** Copies an amount of money if it was filled. */
        public Body money(String... names) {
            for (String name : names) {
                if (form.has(name)) {
                    fields.put(name, form.money(name));
                }
            }
            return this;
        }

        /** Puts a value of the page's own. */
        public Body put(String name, Object value) {
            fields.put(name, value);
            return this;
        }

        /** The field happenedAt as an instant; now if it was left empty. */
        public Body happened(Days days) {
            fields.put("happenedAt", days.entered(form.text("happenedAt")).toString());
            return this;
        }

        /** The finished body. */
        public Map<String, Object> done() {
            return fields;
        }
    }
}
