package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.Optional;

/**
 * How a file was at a moment, without reading it.
 *
 * @param written when it was last written
 * @param size in bytes
 * @param key which file it is for the system, where that can be told: another takes its place when an editor saves
 */
public record Stamp(FileTime written, long size, Optional<Object> key) {

    /** No file system's clock is coarser: FAT counts in steps of 2 seconds. */
    private static final Duration COARSEST = Duration.ofSeconds(2);

    static Stamp of(BasicFileAttributes attributes) {
        return new Stamp(attributes.lastModifiedTime(), attributes.size(), Optional.ofNullable(attributes.fileKey()));
    }

    /** Of a file that is there and can be looked at. */
    public static Optional<Stamp> at(Path file) {
        try {
            return Optional.of(of(Files.readAttributes(file, BasicFileAttributes.class)));
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Whether a later writing would have left another stamp, given the newest time seen with this one. */
    boolean tells(FileTime newest) {
        return written.toInstant().plus(COARSEST).isBefore(newest.toInstant());
    }
}
