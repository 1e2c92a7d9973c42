package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.function.Function;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.register.Added;
import org.drillwright.wording.Message;

/**
 * A file to which lines are added and nothing else: what it held is never written again, so nothing can happen to it.
 * Two runs that add at once take turns. Where adding breaks off the file is cut back; after a pulled plug its last line
 * may be torn, which reading notices and the next run ends.
 */
public final class RecordFile {

    /** How often a run looks whether another one is done, in milliseconds; and how long. */
    private static final int LOOK = 20;

    private static final int PATIENCE = 20_000;

    private final Path file;

    private RecordFile(Path file) {
        this.file = file;
    }

    /** The file of that name, be it there or not. */
    public static RecordFile of(Path file) {
        return new RecordFile(file);
    }

    /** All it holds now; nothing if it isn't there. */
    public byte[] bytes() {
        return HeldFile.read(file);
    }

    /**
     * Adds lines.
     *
     * @param lines made of what the file holds at that moment, which nobody changes meanwhile
     * @return what was added
     */
    public Added append(Function<byte[], Added> lines) {
        WholeFile.mustTakeAFile(file);
        HeldFile.read(file);
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            waitForTurn(channel);
            Added added = lines.apply(bytes(channel));
            if (!added.isNothing()) {
                add(channel, added.text().getBytes(StandardCharsets.UTF_8));
            }
            return added;
        } catch (IOException problem) {
            throw new CannotRun(Message.of(RecordFile.class, "record-file.nothing.was.recorded.cannot", file), problem);
        }
    }

    private static byte[] bytes(FileChannel channel) throws IOException {
        ByteBuffer all = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (all.hasRemaining() && channel.read(all) >= 0) {
            // A read may bring less than there is.
        }
        return Arrays.copyOf(all.array(), all.position());
    }

    private static void add(FileChannel channel, byte[] bytes) throws IOException {
        long before = channel.size();
        try {
            channel.position(before);
            PartFile.writeAll(channel, bytes);
        } catch (IOException problem) {
            cutBack(channel, before);
            throw problem;
        }
    }

    private static void cutBack(FileChannel channel, long size) {
        try {
            channel.truncate(size);
        } catch (IOException stays) {
            // Then the last line is torn, which the next reading notices.
        }
    }

    /** The turn lasts until the channel is closed, or the process is killed; where a disk knows no locks nobody waits. */
    private void waitForTurn(FileChannel channel) {
        try {
            for (int waited = 0; waited <= PATIENCE; waited += LOOK) {
                FileLock lock = channel.tryLock();
                if (lock != null) {
                    return;
                }
                Thread.sleep(LOOK);
            }
        } catch (IOException noLocks) {
            return;
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
        throw new CannotRun(Message.of(RecordFile.class, "record-file.nothing.was.recorded.another", file));
    }
}
