package org.drillwright.print.command.watch;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser that this computer opens pages with. */
public final class Browser {

    private Browser() {}

    /** Whether something was started that should open it. */
    public static boolean open(String address) {
        try {
            new ProcessBuilder(command(System.getProperty("os.name"), address))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }

    static List<String> command(String system, String address) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of(name.startsWith("mac") ? "open" : "xdg-open", address);
    }
}
