package org.drillwright.print.command.console;

import java.io.PrintStream;
import java.io.Writer;

/** Characters to a stream in the stream's own charset. */
public final class StreamWriter extends Writer {

    private final PrintStream stream;

    public StreamWriter(PrintStream stream) {
        this.stream = stream;
    }

    @Override
    public void write(char[] characters, int from, int length) {
        stream.print(String.valueOf(characters, from, length));
    }

    @Override
    public void flush() {
        stream.flush();
    }

    @Override
    public void close() {
        flush();
    }
}
