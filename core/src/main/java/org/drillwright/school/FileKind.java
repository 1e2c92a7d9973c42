package org.drillwright.school;

import java.nio.file.Path;
import java.util.Optional;

/** What a file of a school's folder is read as, by its place and name. */
public enum FileKind {
    DRILL,
    SETTINGS,
    ROSTER,
    CLASS,
    TERM;

    /**
     * The kind of a file, be it there or not; none if it is not read at all, or is never written by hand.
     *
     * @param root the school's folder
     * @param file written as the folder is: both whole, or both from the same place
     */
    public static Optional<FileKind> of(Path root, Path file) {
        if (!file.startsWith(root)) {
            return Optional.empty();
        }
        if (DrillFiles.isDrill(root, file)) {
            return Optional.of(DRILL);
        }
        if (root.equals(file.getParent())) {
            return DrillFiles.isSettings(DrillFiles.name(file))
                    ? Optional.of(SETTINGS)
                    : ClassFiles.isRoster(root, file) ? Optional.of(ROSTER) : Optional.empty();
        }
        if (ClassFiles.isYaml(file) && isIn(root, file, ClassFiles.CLASSES)) {
            return Optional.of(CLASS);
        }
        return ClassFiles.isYaml(file) && isIn(root, file, ClassFiles.TERMS) ? Optional.of(TERM) : Optional.empty();
    }

    private static boolean isIn(Path root, Path file, String folder) {
        return root.resolve(folder).equals(file.getParent());
    }
}
