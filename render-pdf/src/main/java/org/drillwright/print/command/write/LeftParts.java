package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.print.command.folder.Locations;

/** Parts of a file that a run left beside its place when it was killed or the plug was pulled. */
final class LeftParts {

    /** As old as this no run is at work any more, on whatever machine that shares the folder. */
    private static final Duration OLD = Duration.ofDays(1);

    private static final Pattern NUMBERS = Pattern.compile("\\.(\\d{1,18})-\\d+" + Pattern.quote(Part.ENDING));

    private LeftParts() {}

    /**
     * Deletes the parts of the same file whose run is over and that are a day older than one just written. By the times of
     * the files and not by the clock, which may be wrong.
     */
    static void sweep(Path target, Path fresh) {
        String beginning = Part.shownName(target);
        DirectoryStream.Filter<Path> ours = file -> isPartOf(beginning, String.valueOf(file.getFileName()));
        try (DirectoryStream<Path> left = Files.newDirectoryStream(Locations.folderOf(target.toAbsolutePath()), ours)) {
            Instant now = Files.getLastModifiedTime(fresh).toInstant();
            for (Path file : left) {
                if (Files.getLastModifiedTime(file).toInstant().plus(OLD).isBefore(now)) {
                    Part.discard(file);
                }
            }
        } catch (IOException | DirectoryIteratorException notNow) {
            // They harm nothing; another run will sweep them up.
        }
    }

    private static boolean isPartOf(String beginning, String name) {
        if (!name.startsWith(beginning)) {
            return false;
        }
        Matcher rest = NUMBERS.matcher(name).region(beginning.length(), name.length());
        return rest.matches() && ProcessHandle.of(Long.parseLong(rest.group(1))).isEmpty();
    }
}
