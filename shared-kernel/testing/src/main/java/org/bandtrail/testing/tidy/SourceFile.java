package org.bandtrail.testing.tidy;

import java.util.List;

/**
 * A text file of the repository.
 *
 * @param path relative to the root, with slashes on every system
 * @param text its content
 */
record SourceFile(String path, String text) {

    List<String> lines() {
        return text.lines().toList();
    }

    /** The last part of the path. */
    String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** The path without the last part, empty at the root. */
    String folder() {
        int slash = path.lastIndexOf('/');
        return slash < 0 ? "" : path.substring(0, slash);
    }

    /** What follows the last dot of the name, empty without one. */
    String ending() {
        int dot = name().lastIndexOf('.');
        return dot < 0 ? "" : name().substring(dot + 1);
    }

    boolean isJava() {
        return ending().equals("java");
    }
}
