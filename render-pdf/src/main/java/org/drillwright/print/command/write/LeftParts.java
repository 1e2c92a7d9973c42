package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.print.command.folder.Locations;

/** Parts of files that a run left in a folder when it was killed or the plug was pulled. */
final class LeftParts {

    /** As old as this no run is at work any more, on whatever machine that shares the folder. */
    private static final Duration OLD = Duration.ofHours(1);

    private static final Pattern NAME =
            Pattern.compile(".+\\.(\\d{1,18})-[0-9a-f]{16}" + Pattern.quote(PartFile.ENDING));

    /** A folder is looked through once in a run, however many files go there. */
    private static final Set<Path> SWEPT = ConcurrentHashMap.newKeySet();

    private LeftParts() {}

    /**
     * Deletes the parts beside one just written whose run is over and that are an hour older. By the times of the files and
     * not by the clock, which may be wrong.
     */
    static void sweep(Path fresh) {
        Path folder = Locations.folderOf(fresh.toAbsolutePath());
        if (!SWEPT.add(folder)) {
            return;
        }
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, LeftParts::isLeft)) {
            Instant now = Files.getLastModifiedTime(fresh).toInstant();
            for (Path file : left) {
                if (Files.getLastModifiedTime(file).toInstant().plus(OLD).isBefore(now)) {
                    PartFile.discard(file);
                }
            }
        } catch (IOException | DirectoryIteratorException notNow) {
            // They harm nothing; another run will sweep them up.
        }
    }

    private static boolean isLeft(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches()
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
    }
}
