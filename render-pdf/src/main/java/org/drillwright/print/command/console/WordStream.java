package org.drillwright.print.command.console;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;

/** A stream of which everything that is printed comes through {@link #print(String)}. */
abstract class WordStream extends PrintStream {

    WordStream(OutputStream out, Charset charset) {
        super(out, false, charset);
    }

    @Override
    public final void print(char unit) {
        print(String.valueOf(unit));
    }

    @Override
    public final void print(char[] text) {
        print(String.valueOf(text));
    }

    @Override
    public final void print(Object thing) {
        print(String.valueOf(thing));
    }

    @Override
    public final void println() {
        print("\n");
    }

    @Override
    public final void println(String text) {
        print(text + "\n");
    }

    @Override
    public final void println(Object thing) {
        println(String.valueOf(thing));
    }
}
