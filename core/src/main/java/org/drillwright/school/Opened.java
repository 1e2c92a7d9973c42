package org.drillwright.school;

import java.nio.ByteBuffer;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Surroundings;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.Reading;

/**
 * What a school was made from, for reading its folder again.
 *
 * @param found what was seen in the folder, without what is not saved
 * @param settings as they were read, if there is a file of them that could be opened
 * @param judged whether the drills were put to the rules
 */
record Opened(
        DrillFiles.Found found,
        Optional<Settings> settings,
        Surroundings surroundings,
        List<Known> files,
        boolean judged) {

    /** The settings' file. What the same bytes say is the same object, which is soon compared with itself for each drill. */
    record Settings(String name, ByteBuffer bytes, Reading<ReadSchool> reading) {}

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
