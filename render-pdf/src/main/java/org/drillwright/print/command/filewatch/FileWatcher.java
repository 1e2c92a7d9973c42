package org.drillwright.print.command.filewatch;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Calls back after each save in a folder. The system's word is waited for; because it does not come from every file
 * system, the files are looked at every second besides.
 */
public final class FileWatcher implements AutoCloseable {

    /** How often files are looked at, in milliseconds. */
    private static final long LOOK = 1000;

    /** A save is over when nothing has happened for so long, in milliseconds: editors empty a file before they fill it. */
    private static final long QUIET = 60;

    /** However busy the folder is, the callback comes after so many rings. */
    private static final int BUSY = 20;

    private final Path root;
    private final Runnable saved;
    private final FileEvents bell;
    private final Thread thread;
    private FileStamps last;

    private FileWatcher(Path root, Runnable saved) {
        this.root = root;
        this.saved = saved;
        this.bell = new FileEvents(root);
        this.last = FileStamps.of(root);
        this.thread = new Thread(this::watch, "saves");
        thread.setDaemon(true);
    }

    /** @param saved called from another thread, never twice at once; also when it turns out that nothing changed */
    public static FileWatcher start(Path root, Runnable saved) {
        FileWatcher watcher = new FileWatcher(root, saved);
        watcher.listen();
        watcher.thread.start();
        return watcher;
    }

    private void listen() {
        Set<Path> folders = new HashSet<>(Set.of(root));
        last.files()
                .keySet()
                .forEach(file -> Optional.ofNullable(file.getParent()).ifPresent(folders::add));
        bell.listen(folders);
    }

    private void watch() {
        try {
            while (!Thread.currentThread().isInterrupted()) {
                boolean rang = bell.rings(LOOK);
                for (int rings = 0; rang && rings < BUSY && bell.rings(QUIET); rings++) {
                    // Until it is quiet.
                }
                FileStamps now = FileStamps.of(root);
                if (rang || !now.equals(last)) {
                    last = now;
                    listen();
                    saved.run();
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        thread.interrupt();
        bell.close();
    }
}
