package org.bandtrail.testing.tidy;

/**
 * Something untidy.
 *
 * @param rule short name of the rule, as used in the list of exceptions
 * @param path file or folder, relative to the root
 * @param size what was measured, for rules with a budget; 1 for the others
 * @param text what to do, for people
 */
record Complaint(String rule, String path, int size, String text) {

    Complaint(String rule, String path, String text) {
        this(rule, path, 1, text);
    }

    @Override
    public String toString() {
        return "%s: %s: %s".formatted(rule, path, text);
    }
}
