/** What a run of the program was given: streams, a terminal or a pipe, colour, the folder one stands in. */
@NullMarked
package org.drillwright.print.command.console;

import org.jspecify.annotations.NullMarked;
