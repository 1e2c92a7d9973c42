package org.drillwright.print.command.console;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Opens things as a double click would: {@code xdg-open} (freedesktop.org), {@code open} of macOS, and on Windows what
 * Explorer asks.
 */
final class SystemOpener implements Opener {

    /** Who has found nothing to open it with says so within this time. */
    private static final long MOMENT_MILLIS = 1500;

    private final String system;
    private final boolean screen;

    SystemOpener(String system, Map<String, String> environment) {
        this.system = system.toLowerCase(Locale.ROOT);
        this.screen = windows()
                || mac()
                || !environment.getOrDefault("DISPLAY", "").isEmpty()
                || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    }

    @Override
    public boolean open(String what) {
        return screen && started(opening(what));
    }

    @Override
    public boolean edit(Path file) {
        return screen && started(editing(file));
    }

    List<String> opening(String what) {
        return windows()
                ? List.of("rundll32", "url.dll,FileProtocolHandler", what)
                : List.of(mac() ? "open" : "xdg-open", what);
    }

    /** A drill's file ends in .yaml, which Windows and macOS mostly know no program for. */
    List<String> editing(Path file) {
        List<String> command =
                new ArrayList<>(windows() ? List.of("notepad") : mac() ? List.of("open", "-t") : List.of("xdg-open"));
        command.add(file.toString());
        return command;
    }

    private boolean windows() {
        return system.startsWith("windows");
    }

    private boolean mac() {
        return system.startsWith("mac");
    }

    private static boolean started(List<String> command) {
        try {
            Process opener = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return !opener.waitFor(MOMENT_MILLIS, TimeUnit.MILLISECONDS) || opener.exitValue() == 0;
        } catch (IOException none) {
            return false;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
