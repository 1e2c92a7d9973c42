package org.drillwright.print.bench.peers;

import java.io.IOException;

/** One that is timed: a command that is started anew each time, or a process that is asked again. */
interface Contender extends AutoCloseable {

    String name();

    Timed run() throws IOException, InterruptedException;

    @Override
    default void close() {}
}
