package org.bandtrail.local;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/**
 * The programs of PostgreSQL 18 (initdb, pg_ctl, postgres), unpacked from the jar that carries them for this system.
 * They run with ordinary rights even when the launcher runs as root, because PostgreSQL refuses to run as root.
 */
final class PostgresPrograms {

    private static final int OWNER_MAY_RUN = 0100;

    private final Path home;
    private final Path output;

    private PostgresPrograms(Path home, Path output) {
        this.home = home;
        this.output = output;
    }

    /**
     * Unpacks the programs, unless this very archive was unpacked before.
     *
     * @param folder where the programs and their log go
     * @return the programs, ready to run
     * @throws CannotStart if there are none for this system
     */
    static PostgresPrograms unpacked(DataFolder folder) {
        try {
            byte[] archive = archive();
            Path home = folder.programs().resolve(digest(archive));
            if (!Files.isDirectory(home)) {
                // Unpacked beside its place and then renamed: a half unpacked folder is never mistaken for a whole one.
                Path part = Files.createDirectories(folder.programs()
                        .resolve("unpacking-" + ProcessHandle.current().pid()));
                unpack(archive, part);
                Files.move(part, home, StandardCopyOption.ATOMIC_MOVE);
            }
            return new PostgresPrograms(home, folder.log("postgres-programs.log"));
        } catch (IOException e) {
            throw new CannotStart("The PostgreSQL programs cannot be unpacked into " + folder.programs() + ": " + e, e);
        }
    }

    private static byte[] archive() throws IOException {
        String name = "/postgres-" + system() + "-" + machine() + ".txz";
        try (InputStream found = PostgresPrograms.class.getResourceAsStream(name)) {
            if (found == null) {
                throw new CannotStart("There is no embedded PostgreSQL for this system (" + name
                        + " is missing). Run the services against an installed PostgreSQL; see deploy/README.md.");
            }
            return found.readAllBytes();
        }
    }

    private static String system() {
        return System.getProperty("os.name").startsWith("Mac") ? "darwin" : "linux";
    }

    private static String machine() {
        String machine = switch (System.getProperty("os.arch")) {
            case "amd64", "x86_64" -> "x86_64";
            case "aarch64", "arm64" -> "arm_64";
            case String other -> other;
        };
        return Files.exists(Path.of("/etc/alpine-release")) ? machine + "-alpine_linux" : machine;
    }

    private static String digest(byte[] archive) {
        try {
            byte[] whole = MessageDigest.getInstance("SHA-256").digest(archive);
            return HexFormat.of().formatHex(whole, 0, 8);
        } catch (NoSuchAlgorithmException everyJdkHasIt) {
            throw new AssertionError(everyJdkHasIt);
        }
    }

    private static void unpack(byte[] archive, Path target) throws IOException {
        try (TarArchiveInputStream tar =
                new TarArchiveInputStream(new XZCompressorInputStream(new ByteArrayInputStream(archive)))) {
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                unpack(entry, tar, target);
            }
        }
    }

    private static void unpack(TarArchiveEntry entry, InputStream content, Path target) throws IOException {
        Path path = target.resolve(entry.getName()).normalize();
        if (!path.startsWith(target)) {
            throw new IOException("The archive wants to write outside its folder: " + entry.getName());
        }
        if (entry.isDirectory()) {
            Files.createDirectories(path);
            return;
        }
        Files.createDirectories(path.getParent());
        if (entry.isSymbolicLink()) {
            Files.deleteIfExists(path);
            Files.createSymbolicLink(path, Path.of(entry.getLinkName()));
        } else {
            Files.copy(content, path, StandardCopyOption.REPLACE_EXISTING);
            if ((entry.getMode() & OWNER_MAY_RUN) != 0 && !path.toFile().setExecutable(true)) {
                throw new IOException("The system does not allow programs in " + target);
            }
        }
    }

    /**
     * Runs one program to its end.
     *
     * @param program its file name
     * @param arguments its arguments
     * @throws CannotStart if it reports failure; the message carries what it printed
     */
    void run(String program, String... arguments) {
        try {
            List<String> command = new ArrayList<>(ordinaryRights());
            command.add(home.resolve("bin").resolve(program).toString());
            command.addAll(List.of(arguments));
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(output.toFile())
                    .start();
            int exit = process.waitFor();
            if (exit != 0) {
                throw new CannotStart(program + " ended with code " + exit + ":\n" + Files.readString(output));
            }
        } catch (IOException e) {
            throw new CannotStart(program + " cannot be run: " + e, e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CannotStart("Stopped while " + program + " was running.", e);
        }
    }

    private static List<String> ordinaryRights() throws IOException, InterruptedException {
        if (!"root".equals(System.getProperty("user.name"))) {
            return List.of();
        }
        // In a user namespace of its own root is nobody in particular, yet still the owner of its files.
        if (new ProcessBuilder("unshare", "-U", "true").start().waitFor() == 0) {
            return List.of("unshare", "-U");
        }
        throw new CannotStart("PostgreSQL does not run as root, and this system does not let root give up its rights"
                + " with unshare -U. Start Bandtrail as an ordinary user.");
    }
}
