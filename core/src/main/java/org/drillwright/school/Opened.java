package org.drillwright.school;

import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Surroundings;

/**
 * What a school was made from, for reading its folder again.
 *
 * @param found what was seen in the folder, without what is not saved
 * @param judged whether the drills were put to the rules
 */
record Opened(DrillFiles.Found found, Surroundings surroundings, List<Known> files, boolean judged) {

    Opened {
        files = List.copyOf(files);
    }

    /**
     * The files whose stamps tell whether they were written since. A file that was written as late as any may be written
     * once more within what a file system's clock can tell. A file that could not be read is always tried again: what kept
     * it from being read may have gone without leaving a trace in it.
     */
    Map<DrillFile, Known> unchanging() {
        FileTime newest = files.stream()
                .flatMap(known -> known.file().stamp().stream())
                .map(Stamp::written)
                .max(Comparator.naturalOrder())
                .orElse(FileTime.fromMillis(0));
        Map<DrillFile, Known> unchanging = new HashMap<>();
        for (Known known : files) {
            boolean told = known.file().unsaved().isPresent()
                    || known.file().stamp().filter(stamp -> stamp.tells(newest)).isPresent();
            if (told && known.reading().value().isPresent()) {
                unchanging.put(known.file(), known);
            }
        }
        return unchanging;
    }

    /** All files, for who does not look whether they were written since. */
    Map<DrillFile, Known> all() {
        Map<DrillFile, Known> all = new HashMap<>();
        files.forEach(known -> all.put(known.file(), known));
        return all;
    }
}
