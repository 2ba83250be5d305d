// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedTransferQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * A person has one window. The first start holds a lock and listens at a socket beside it; a later one hands over its files there and
 * ends. Both lie in a folder that only this person can enter. The system takes the lock back when its process ends, however it ends,
 * so what a killed window left behind stops nobody.
 */
final class OneWindow implements AutoCloseable {
    private static final String LOCK = "window.lock";
    private static final String SOCKET = "window.socket";
    private static final String TAKEN = "taken";
    private static final long PAUSE_MS = 100;

    /** How long the window may take to look at what is handed over; it may be starting itself. */
    private static final long TAKING_S = 60;

    private final LinkedTransferQueue<List<String>> requests = new LinkedTransferQueue<>();
    private final Path folder;
    private @Nullable FileChannel lock;
    private @Nullable ServerSocketChannel server;

    private OneWindow(Path folder) {
        this.folder = folder;
    }

    /** What became of a start. */
    enum Role {
        /** It is to open the window. */
        FIRST,
        /** The window that is there has taken the files; nothing is left to be done. */
        HANDED_OVER,
        /** There is a window that does not answer, or no place for the lock: it opens one that keeps its state to itself. */
        ALONE
    }

    /** A start that does not know its role yet. */
    static OneWindow in(Path folder) {
        return new OneWindow(folder);
    }

    /**
     * Finds out which role this start has, and plays it: listens, or hands over.
     *
     * @param files whole paths of the jobs to be opened; none only brings the window to the front
     * @param patienceMs how long a window that holds the lock may stay silent
     */
    Role start(List<String> files, long patienceMs) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(patienceMs);
        try {
            prepare();
            do {
                if (claim()) {
                    listen();
                    return Role.FIRST;
                }
                if (hand(files)) {
                    return Role.HANDED_OVER;
                }
                // The other window may just be opening, or closing.
                Thread.sleep(PAUSE_MS);
            } while (System.nanoTime() < end);
        } catch (IOException | UnsupportedOperationException noPlace) {
            return Role.ALONE;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Role.ALONE;
    }

    /** What later starts hand over: the jobs to be opened; an empty list asks for the window alone. */
    BlockingQueue<List<String>> requests() {
        return requests;
    }

    /** A folder that others may enter, or that is another person's, is no place: its socket would open files for anybody. */
    private void prepare() throws IOException {
        Files.createDirectories(folder);
        if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    private boolean claim() throws IOException {
        FileChannel channel =
                FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            @Nullable FileLock held = channel.tryLock();
            if (held != null) {
                lock = channel;
                return true;
            }
        } catch (OverlappingFileLockException inThisProcess) {
            // Held, like a lock of another process.
        } catch (IOException unlockable) {
            channel.close();
            throw unlockable;
        }
        channel.close();
        return false;
    }

    /** Without a socket, for instance where its name would be too long, the window is the first all the same. */
    private void listen() {
        Path socket = folder.resolve(SOCKET);
        try {
            Files.deleteIfExists(socket);
            ServerSocketChannel channel = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
            server = channel;
            channel.bind(UnixDomainSocketAddress.of(socket));
            Thread thread = new Thread(() -> accept(channel), "starts of this program");
            thread.setDaemon(true);
            thread.start();
        } catch (IOException | UnsupportedOperationException silent) {
            stop();
        }
    }

    private void accept(ServerSocketChannel channel) {
        while (channel.isOpen()) {
            try {
                SocketChannel start = channel.accept();
                Thread thread = new Thread(() -> take(start), "a start of this program");
                thread.setDaemon(true);
                thread.start();
            } catch (IOException closed) {
                return;
            }
        }
    }

    /** The other start ends when the window has taken its files, and not before. */
    private void take(SocketChannel start) {
        try (start;
                BufferedReader reader = new BufferedReader(Channels.newReader(start, StandardCharsets.UTF_8))) {
            List<String> files = new ArrayList<>();
            for (String line = reader.readLine(); line != null && !line.isEmpty(); line = reader.readLine()) {
                files.add(URLDecoder.decode(line, StandardCharsets.UTF_8));
            }
            if (requests.tryTransfer(List.copyOf(files), TAKING_S, TimeUnit.SECONDS)) {
                send(start, TAKEN + "\n");
            }
        } catch (IOException | IllegalArgumentException gone) {
            // It has given up, or is no start of this program.
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean hand(List<String> files) {
        try (SocketChannel window = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            window.connect(UnixDomainSocketAddress.of(folder.resolve(SOCKET)));
            StringBuilder text = new StringBuilder();
            // A line for each, in which a line break in its name is written otherwise.
            files.forEach(file ->
                    text.append(URLEncoder.encode(file, StandardCharsets.UTF_8)).append('\n'));
            send(window, text.append('\n').toString());
            return TAKEN.equals(new BufferedReader(Channels.newReader(window, StandardCharsets.UTF_8)).readLine());
        } catch (IOException notThere) {
            return false;
        }
    }

    private static void send(SocketChannel to, String text) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
            to.write(bytes);
        }
    }

    private void stop() {
        if (server != null) {
            try {
                server.close();
                Files.deleteIfExists(folder.resolve(SOCKET));
            } catch (IOException stays) {
                // The next window replaces it.
            }
        }
        server = null;
    }

    /** From now on another start is the first. The file of the lock stays: deleting it could take it from under another start. */
    @Override
    public void close() {
        stop();
        if (lock != null) {
            try {
                lock.close();
            } catch (IOException stays) {
                // It goes with the process.
            }
        }
        lock = null;
    }
}
