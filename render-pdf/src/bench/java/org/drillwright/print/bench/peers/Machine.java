package org.drillwright.print.bench.peers;

import java.lang.management.ManagementFactory;
import java.lang.management.OperatingSystemMXBean;
import java.util.Locale;

/** What the figures were measured on. */
final class Machine {

    private Machine() {}

    static String described(int rounds) {
        return String.format(
                Locale.ROOT,
                "Rounds: %d, of long turns %d. %s %s, %d processors. %s",
                rounds,
                Math.max(1, rounds / 3),
                System.getProperty("os.name"),
                System.getProperty("os.arch"),
                Runtime.getRuntime().availableProcessors(),
                busy("At the beginning"));
    }

    static String busy(String when) {
        OperatingSystemMXBean system = ManagementFactory.getOperatingSystemMXBean();
        return String.format(
                Locale.ROOT, "%s %.1f processes of all kinds wanted a processor.", when, system.getSystemLoadAverage());
    }
}
