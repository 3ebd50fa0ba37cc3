package org.bandtrail.local;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * The folder that holds everything which must survive a restart: the PostgreSQL cluster, the unpacked server
 * programs, the secrets, the log, and the note that the demo season is loaded. One process at a time may use it.
 */
public final class DataFolder implements AutoCloseable {

    private static final int SECRET_BYTES = 32;

    private final Path root;
    private final FileChannel lockFile;

    private DataFolder(Path root, FileChannel lockFile) {
        this.root = root;
        this.lockFile = lockFile;
    }

    /**
     * Opens the folder for this process alone, and creates it if it is not there.
     *
     * @param root the folder
     * @return the folder; the system lets go of it even if this process is killed
     * @throws CannotStart if another process has it, or it cannot be written
     */
    public static DataFolder open(Path root) {
        try {
            Files.createDirectories(root);
            Files.createDirectories(root.resolve("secrets"), ownerOnly(root, "rwx------"));
            FileChannel channel =
                    FileChannel.open(root.resolve("in-use.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                throw new CannotStart("Another Bandtrail is already running on the data folder " + root
                        + ". Stop it first (Ctrl-C in its window), or choose another folder with --data.");
            }
            return new DataFolder(root, channel);
        } catch (IOException e) {
            throw new CannotStart("The data folder " + root + " cannot be used: " + e + ". Choose one with --data.", e);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    /**
     * A secret that is made once, at random, and then stays the same.
     *
     * @param name a file name
     * @return 64 hexadecimal digits, kept in a file that only its owner can read
     */
    public String secret(String name) {
        Path file = root.resolve("secrets").resolve(name);
        try {
            if (!Files.exists(file)) {
                byte[] random = new byte[SECRET_BYTES];
                new SecureRandom().nextBytes(random);
                // The mode is given at creation: chmod afterwards would leave a moment in which others can read it.
                Files.createFile(file, ownerOnly(root, "rw-------"));
                Files.writeString(file, HexFormat.of().formatHex(random));
            }
            String secret = Files.readString(file).strip();
            if (secret.isEmpty()) {
                throw new CannotStart("The secret " + file + " is empty. Delete the file to have a new one made.");
            }
            return secret;
        } catch (IOException e) {
            throw new CannotStart("The secret " + file + " cannot be read or written: " + e, e);
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path root, String mode) throws IOException {
        if (!Files.getFileStore(root).supportsFileAttributeView("posix")) {
            return new FileAttribute<?>[0];
        }
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))};
    }

    /**
     * The file that holds a secret, for programs that want to be given a file.
     *
     * @param name the name given to {@link #secret}
     * @return the path
     */
    Path secretFile(String name) {
        return root.resolve("secrets").resolve(name);
    }

    /**
     * The folder of the PostgreSQL cluster.
     *
     * @return the path, whether or not it exists yet
     */
    public Path cluster() {
        return root.resolve("postgres");
    }

    /**
     * The folder for the unpacked PostgreSQL programs. It is beside the data and not in the system's temporary
     * folder, which may forbid programs or be swept while the server runs.
     *
     * @return the path, whether or not it exists yet
     */
    public Path programs() {
        return root.resolve("postgres-programs");
    }

    /**
     * A log file.
     *
     * @param name the file's name
     * @return its path in a folder that exists
     */
    public Path log(String name) {
        try {
            return Files.createDirectories(root.resolve("logs")).resolve(name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Whether something that is done only once in the life of this folder has been done.
     *
     * @param what a file name for it
     * @return whether {@link #done} was called with the same name, in this process or an earlier one
     */
    public boolean isDone(String what) {
        return Files.exists(root.resolve(what));
    }

    /**
     * Remembers that something was done which is done only once.
     *
     * @param what a file name for it
     */
    public void done(String what) {
        try {
            Files.writeString(root.resolve(what), "done\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lets another process have the folder. */
    @Override
    public void close() {
        try {
            lockFile.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
