/** The conversation with who started the program without a command. */
@NullMarked
package org.drillwright.print.command.ask;

import org.jspecify.annotations.NullMarked;
