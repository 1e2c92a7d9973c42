package org.drillwright.print.command.console;

import java.io.InputStream;
import java.io.OutputStream;

/** Two streams to and from another program. */
public record BytePipe(InputStream in, OutputStream out) {}
