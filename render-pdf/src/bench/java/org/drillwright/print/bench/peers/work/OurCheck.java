package org.drillwright.print.bench.peers.work;

import java.nio.file.Path;
import java.util.List;
import org.drillwright.school.SchoolFolder;

/** Reads, plays and judges a school: {@code OurCheck SCHOOL}; answers how many drills are sound. */
public final class OurCheck {

    private OurCheck() {}

    public static void main(String[] args) throws Exception {
        Path school = Path.of(args[0]);
        Work.of(
                () -> SchoolFolder.open(school).entries().stream()
                        .filter(SchoolFolder.Entry::isSound)
                        .count(),
                List.of(args));
    }
}
