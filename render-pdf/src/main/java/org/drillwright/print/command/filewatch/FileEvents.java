package org.drillwright.print.command.filewatch;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** The system's own word that something happened in a folder; on some file systems it never comes. */
final class FileEvents implements AutoCloseable {

    private final Optional<WatchService> service;
    private final Set<Path> heard = new HashSet<>();

    FileEvents(Path root) {
        this.service = service(root);
    }

    private static Optional<WatchService> service(Path root) {
        try {
            return Optional.of(root.getFileSystem().newWatchService());
        } catch (IOException | UnsupportedOperationException none) {
            return Optional.empty();
        }
    }

    /** Listens to these folders as well. A folder that goes and comes back is asked for anew. */
    void listen(Set<Path> folders) {
        service.ifPresent(bells -> folders.stream().filter(heard::add).forEach(folder -> listen(folder, bells)));
    }

    private void listen(Path folder, WatchService bells) {
        try {
            folder.register(
                    bells,
                    StandardWatchEventKinds.ENTRY_CREATE,
                    StandardWatchEventKinds.ENTRY_MODIFY,
                    StandardWatchEventKinds.ENTRY_DELETE);
        } catch (IOException gone) {
            heard.remove(folder);
        }
    }

    /** Waits for a ring, at most so many milliseconds; whether there was one. */
    boolean rings(long milliseconds) throws InterruptedException {
        if (service.isEmpty()) {
            Thread.sleep(milliseconds);
            return false;
        }
        WatchKey key = ring(service.get(), milliseconds);
        if (key == null) {
            return false;
        }
        key.pollEvents();
        if (!key.reset()) {
            heard.remove((Path) key.watchable());
        }
        return true;
    }

    private static @org.jspecify.annotations.Nullable WatchKey ring(WatchService bells, long milliseconds)
            throws InterruptedException {
        try {
            return bells.poll(milliseconds, TimeUnit.MILLISECONDS);
        } catch (ClosedWatchServiceException closed) {
            throw new InterruptedException("closed");
        }
    }

    @Override
    public void close() {
        service.ifPresent(bells -> {
            try {
                bells.close();
            } catch (IOException already) {
                // It is the end anyway.
            }
        });
    }
}
