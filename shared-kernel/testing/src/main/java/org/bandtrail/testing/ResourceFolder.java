package org.bandtrail.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads the files of a folder of the class path, whether it lies in a directory or in a jar. */
final class ResourceFolder {

    private ResourceFolder() {}

    /** Texts by file name, without sub-folders; the union over all places of the class path that have the folder. */
    static Map<String, String> texts(String folder) {
        Map<String, String> texts = new TreeMap<>();
        try {
            ClassLoader loader = Thread.currentThread().getContextClassLoader();
            for (URL place : Collections.list(loader.getResources(folder))) {
                read(place.toURI(), texts);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read folder [%s] of the class path.".formatted(folder), failed);
        } catch (URISyntaxException strange) {
            throw new IllegalStateException(
                    "The class path has a strange address for [%s].".formatted(folder), strange);
        }
        return texts;
    }

    private static void read(URI place, Map<String, String> texts) throws IOException {
        if ("jar".equals(place.getScheme())) {
            String[] parts = place.toString().split("!", 2);
            try (FileSystem jar = FileSystems.newFileSystem(Path.of(URI.create(parts[0].substring("jar:".length()))))) {
                read(jar.getPath(parts[1]), texts);
            }
        } else {
            read(Path.of(place), texts);
        }
    }

    private static void read(Path folder, Map<String, String> texts) throws IOException {
        List<Path> files;
        try (Stream<Path> entries = Files.list(folder)) {
            files = entries.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            String name = file.getFileName().toString();
            if (texts.containsKey(name) && !name.endsWith(".txt")) {
                throw new AssertionError("Two places of the class path have a golden file [%s].".formatted(name));
            }
            // The lists of several places add up; two golden files of one name would hide each other.
            texts.merge(name, Files.readString(file), "%s\n%s"::formatted);
        }
    }
}
