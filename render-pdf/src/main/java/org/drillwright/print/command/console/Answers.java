package org.drillwright.print.command.console;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;

/** What a person types. With each answer the terminal has begun a new line, which whoever counts its columns is told. */
final class Answers extends BufferedReader {

    private final Runnable begun;

    Answers(Reader in, Runnable begun) {
        super(in);
        this.begun = begun;
    }

    @Override
    public String readLine() throws IOException {
        String answer = super.readLine();
        begun.run();
        return answer;
    }
}
