package org.bandtrail.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * All golden files of one folder of the class path, for example {@code history/reels} in a service's test resources or
 * {@code samples} in a contract. Beside them lie two lists:
 *
 * <ul>
 *   <li>{@code digests.txt}: SHA-256 and name of every file. A stored event is on disk for ever, so its golden file is
 *       never edited; an edit fails here.
 *   <li>{@code stored-names.txt}: every name ever stored. Only lengthened: a name whose event is no longer written
 *       stays, because it can still be read, and is never given to another event. A name cannot be taken out alone, its
 *       files and their digests still ask for it.
 * </ul>
 */
public final class GoldenFiles {
    private final String folder;
    private final List<GoldenFile> files;
    private final List<String> digests;
    private final List<String> names;

    private GoldenFiles(String folder, List<GoldenFile> files, List<String> digests, List<String> names) {
        this.folder = folder;
        this.files = List.copyOf(files);
        this.digests = List.copyOf(digests);
        this.names = List.copyOf(names);
    }

    /**
     * Reads the folder wherever it stands on the class path, in folders and in jars.
     *
     * @param folder relative to the class path, for example {@code history/reels}
     * @throws AssertionError if there is no JSON file, or one is misnamed
     */
    public static GoldenFiles in(String folder) {
        Map<String, String> texts = ResourceFolder.texts(folder);
        List<GoldenFile> files = new ArrayList<>();
        texts.forEach((name, text) -> {
            if (name.endsWith(".json")) {
                files.add(GoldenFile.named(name, text));
            }
        });
        if (files.isEmpty()) {
            throw new AssertionError("There is no golden file in [%s] on the class path.".formatted(folder));
        }
        return new GoldenFiles(folder, files, lines(texts, "digests.txt"), lines(texts, "stored-names.txt"));
    }

    private static List<String> lines(Map<String, String> texts, String name) {
        return texts.getOrDefault(name, "")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toList();
    }

    /** All files, by name; for {@code @MethodSource} and loops. */
    public List<GoldenFile> files() {
        return files;
    }

    /** The files of one stored name, oldest revision first. */
    public List<GoldenFile> of(String storedName) {
        return files.stream()
                .filter(file -> file.storedName().equals(storedName))
                .sorted((a, b) -> Integer.compare(Integer.parseInt(a.revision()), Integer.parseInt(b.revision())))
                .toList();
    }

    /** The file of this name, for example {@code reel.received.1.json}. */
    public Optional<GoldenFile> named(String fileName) {
        return files.stream().filter(file -> file.fileName().equals(fileName)).findFirst();
    }

    /**
     * Fails if a file was edited, removed or added without its digest. The message has the lines to add for new files.
     *
     * @throws AssertionError that lists each such file
     */
    public void assertNoOldFileWasEdited() {
        Map<String, String> listed = new HashMap<>();
        List<String> complaints = new ArrayList<>();
        for (String line : digests) {
            String[] parts = line.split("\\s+", 2);
            if (parts.length < 2 || listed.put(parts[1], parts[0]) != null) {
                complaints.add(
                        "digests.txt has a line that is no digest and name, or a name twice: [%s]".formatted(line));
            }
        }
        Set<String> missing = new TreeSet<>(listed.keySet());
        for (GoldenFile file : files) {
            missing.remove(file.fileName());
            String actual = Digests.sha256(file.text());
            String expected = listed.get(file.fileName());
            if (expected == null) {
                complaints.add("new file, add to digests.txt:%n%s  %s".formatted(actual, file.fileName()));
            } else if (!expected.equals(actual)) {
                complaints.add(
                        "%s was edited. Undo that and add a file of the next revision".formatted(file.fileName()));
            }
        }
        missing.forEach(name -> complaints.add("%s was removed. What is stored must stay readable".formatted(name)));
        fail(complaints);
    }

    /**
     * Fails unless every event type has a stored name of its own that is listed, and a golden file at its current
     * revision; and every golden file's name is listed.
     *
     * @param events sealed interfaces whose nested records are annotated with stored name and revision
     * @throws AssertionError that lists each gap
     */
    public void assertCover(Class<?>... events) {
        List<String> complaints = new ArrayList<>();
        Set<String> listed = new TreeSet<>();
        for (String name : names) {
            if (!listed.add(name)) {
                complaints.add("stored-names.txt has [%s] twice".formatted(name));
            }
        }
        Set<String> used = new TreeSet<>();
        for (StoredType type : StoredType.of(events)) {
            if (!used.add(type.name())) {
                complaints.add(
                        "stored name [%s] is used by two events; give %s its own".formatted(type.name(), type.type()));
            }
            boolean golden =
                    of(type.name()).stream().anyMatch(file -> file.revision().equals(type.revision()));
            if (!golden) {
                complaints.add(
                        "%s has no golden file: add %s.%s.json".formatted(type.type(), type.name(), type.revision()));
            }
        }
        files.forEach(file -> used.add(file.storedName()));
        used.removeAll(listed);
        used.forEach(name -> complaints.add("stored-names.txt lacks [%s]; add it at the end".formatted(name)));
        fail(complaints);
    }

    private void fail(List<String> complaints) {
        if (!complaints.isEmpty()) {
            throw new AssertionError("Golden files in [%s]:%n%s".formatted(folder, String.join("\n", complaints)));
        }
    }
}
