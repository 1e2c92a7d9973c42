package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

/** Who may read and write a file, where the system tells it in the way of POSIX; elsewhere the folder says it. */
final class Rights {

    private static final FileAttribute<Set<PosixFilePermission>> OWN =
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

    private Rights() {}

    /** For a part of a file that is there: nobody else reads it before it has that file's rights. */
    static FileAttribute<?>[] whileWriting(Path target) {
        return isKnown(target) ? new FileAttribute<?>[] {OWN} : new FileAttribute<?>[0];
    }

    private static boolean isKnown(Path file) {
        return Files.exists(file) && Files.getFileAttributeView(file, PosixFileAttributeView.class) != null;
    }

    /**
     * Gives a file the rights of another, its owner and its group. Where the group can't be had, the group that the file has
     * instead may do no more than everybody.
     */
    static void keep(Path from, Path to) throws IOException {
        if (!isKnown(from)) {
            return;
        }
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        PosixFileAttributes old = Files.readAttributes(from, PosixFileAttributes.class);
        PosixFileAttributes now = view.readAttributes();
        Set<PosixFilePermission> rights = EnumSet.noneOf(PosixFilePermission.class);
        rights.addAll(old.permissions());
        if (!old.owner().equals(now.owner())) {
            isGiven(() -> view.setOwner(old.owner()));
        }
        if (!old.group().equals(now.group()) && !isGiven(() -> view.setGroup(old.group()))) {
            keepOnly(rights, PosixFilePermission.GROUP_READ, PosixFilePermission.OTHERS_READ);
            keepOnly(rights, PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE);
            keepOnly(rights, PosixFilePermission.GROUP_EXECUTE, PosixFilePermission.OTHERS_EXECUTE);
        }
        view.setPermissions(rights);
    }

    private static void keepOnly(Set<PosixFilePermission> rights, PosixFilePermission one, PosixFilePermission with) {
        if (!rights.contains(with)) {
            rights.remove(one);
        }
    }

    @FunctionalInterface
    private interface Gift {
        void give() throws IOException;
    }

    /** Only the system's administrator gives files away, and a group only who belongs to it. */
    private static boolean isGiven(Gift gift) {
        try {
            gift.give();
            return true;
        } catch (IOException refused) {
            return false;
        }
    }
}
