package org.drillwright.print.command.console;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Passes on all that is printed, and remembers it. */
final class Echo extends WordStream {

    private final PrintStream to;
    private final StringBuilder heard;

    Echo(PrintStream to, StringBuilder heard) {
        super(OutputStream.nullOutputStream(), StandardCharsets.UTF_8);
        this.to = to;
        this.heard = heard;
    }

    @Override
    public void print(String text) {
        heard.append(text);
        to.print(text);
    }

    @Override
    public void flush() {
        to.flush();
    }
}
