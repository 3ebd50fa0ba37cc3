package org.bandtrail.testing.tidy;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What is checked in, as far as a walk can tell: everything but the folders that builds and tools make. */
record SourceTree(Path root, List<SourceFile> files, Set<String> folders) {
    private static final Set<String> MADE =
            Set.of("target", "node_modules", ".git", ".data", ".idea", ".vscode", ".settings");
    private static final Set<String> BINARY =
            Set.of("png", "jpg", "jpeg", "webp", "woff2", "jar", "zip", "gz", "xlsx", "ico");

    /** Reads the tree below the root. Binary files are listed by nobody and read by nobody. */
    static SourceTree read(Path root) throws IOException {
        List<SourceFile> files = new ArrayList<>();
        Set<String> folders = new TreeSet<>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (MADE.contains(folder.getFileName().toString())) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                SourceFile named = new SourceFile(relative(root, file), "");
                addFolders(named.folder(), folders);
                if (!BINARY.contains(named.ending())) {
                    files.add(new SourceFile(named.path(), text(file)));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        files.sort(Comparator.comparing(SourceFile::path));
        return new SourceTree(root, List.copyOf(files), folders);
    }

    /** The root of the repository around the working directory: the nearest folder above that has {@code .mvn}. */
    static Path rootAround(Path start) {
        Path folder = start.toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
            if (folder == null) {
                throw new IllegalStateException("There is no .mvn in or above [%s].".formatted(start));
            }
        }
        return folder;
    }

    private static String relative(Path root, Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    /** A folder counts if a file lies somewhere below it; empty ones are not checked in. */
    private static void addFolders(String folder, Set<String> folders) {
        String rest = folder;
        while (!rest.isEmpty() && folders.add(rest)) {
            rest = rest.contains("/") ? rest.substring(0, rest.lastIndexOf('/')) : "";
        }
    }

    private static String text(Path file) throws IOException {
        try {
            return Files.readString(file);
        } catch (MalformedInputException notText) {
            throw new IOException("[%s] is not UTF-8 text. If it is binary, list its ending.".formatted(file), notText);
        }
    }
}
