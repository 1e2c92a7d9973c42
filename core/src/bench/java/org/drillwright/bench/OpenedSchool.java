package org.drillwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.drillwright.school.JudgedCounts;
import org.drillwright.school.SchoolFolder;

/**
 * Opens a school as {@code check} does, then saves one drill and opens it again as {@code watch} does: {@code
 * OpenedSchool FOLDER}. Prints the processor's time of both in milliseconds, what is held in bytes, and how many files
 * the second opening read.
 */
public final class OpenedSchool {

    private OpenedSchool() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        long before = held();
        long start = processor();
        SchoolFolder school = SchoolFolder.open(folder);
        JudgedCounts.of(school.entries());
        long opened = processor() - start;
        long held = held() - before;
        AtomicInteger read = new AtomicInteger();
        long again = processor();
        Path drill = school.entries().get(0).file();
        Files.writeString(drill, Files.readString(drill) + "# saved\n");
        SchoolFolder after = school.again((done, all) -> read.incrementAndGet());
        again = processor() - again;
        System.out.printf(Locale.ROOT, "%d %d %d %d%n", opened / 1_000_000, held, again / 1_000_000, read.get());
        if (after.entries().size() != school.entries().size()) {
            throw new IllegalStateException("a drill was lost");
        }
    }

    private static long processor() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static long held() {
        for (int time = 0; time < 3; time++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
