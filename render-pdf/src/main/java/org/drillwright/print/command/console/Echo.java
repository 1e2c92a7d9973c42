package org.drillwright.print.command.console;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Passes on all that is printed, and remembers it. */
final class Echo extends PrintStream {

    private final PrintStream to;
    private final StringBuilder heard;

    Echo(PrintStream to, StringBuilder heard) {
        super(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        this.to = to;
        this.heard = heard;
    }

    @Override
    public void print(String text) {
        heard.append(text);
        to.print(text);
    }

    @Override
    public void print(char unit) {
        print(String.valueOf(unit));
    }

    @Override
    public void print(Object thing) {
        print(String.valueOf(thing));
    }

    @Override
    public void println() {
        print("\n");
    }

    @Override
    public void println(String text) {
        print(text + "\n");
    }

    @Override
    public void println(Object thing) {
        print(thing + "\n");
    }

    @Override
    public void flush() {
        to.flush();
    }
}
