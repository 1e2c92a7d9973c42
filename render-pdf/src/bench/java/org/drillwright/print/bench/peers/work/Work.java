package org.drillwright.print.bench.peers.work;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One pass of some work; answers a number by which its result can be known. */
@FunctionalInterface
interface Work {

    String ONCE = "once";

    long pass() throws Exception;

    /** Once, if the last argument says so; else as many passes as a line of input asks for, answered by their mean. */
    static void of(Work work, List<String> arguments) throws Exception {
        if (arguments.get(arguments.size() - 1).equals(ONCE)) {
            System.out.println(work.pass());
            return;
        }
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        BufferedReader asked = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        System.out.println("ready");
        for (@Nullable String line = asked.readLine(); line != null; line = asked.readLine()) {
            int passes = Integer.parseInt(line);
            long processor = system.getProcessCpuTime();
            long clock = System.nanoTime();
            long result = 0;
            for (int pass = 0; pass < passes; pass++) {
                result = work.pass();
            }
            long took = (System.nanoTime() - clock) / passes;
            System.out.println(took + " " + (system.getProcessCpuTime() - processor) / passes + " " + result);
        }
    }
}
