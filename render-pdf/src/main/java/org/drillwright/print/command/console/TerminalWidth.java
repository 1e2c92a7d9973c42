package org.drillwright.print.command.console;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How many columns the terminal has. It is asked once, when first wanted: that takes a moment. */
final class TerminalWidth implements IntSupplier {

    /** That of most terminals that nobody has widened. */
    static final int USUAL = 80;

    private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("\\d+ (\\d{1,4})");

    private static final long PATIENCE_MILLIS = 500;

    private final Map<String, String> environment;
    private int known;

    TerminalWidth(Map<String, String> environment) {
        this.environment = environment;
    }

    @Override
    public int getAsInt() {
        if (known == 0) {
            String told = environment.getOrDefault("COLUMNS", "");
            int columns = told.matches("\\d{1,4}") ? Integer.parseInt(told) : asked();
            known = columns > 0 ? columns : USUAL;
        }
        return known;
    }

    /** {@code stty size} answers with rows and columns (coreutils, BSD); 0 if nobody answers, as on Windows. */
    private static int asked() {
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(new File("/dev/tty"))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!stty.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
                stty.destroy();
                return 0;
            }
            return columns(new String(stty.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException nobody) {
            return 0;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return 0;
        }
    }

    private static int columns(String said) {
        Matcher numbers = ROWS_AND_COLUMNS.matcher(said.strip());
        return numbers.matches() ? Integer.parseInt(numbers.group(1)) : 0;
    }
}
