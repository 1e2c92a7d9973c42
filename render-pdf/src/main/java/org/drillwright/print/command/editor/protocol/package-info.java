/** The Language Server Protocol, version 3.17; the only user of LSP4J. */
@NullMarked
package org.drillwright.print.command.editor.protocol;

import org.jspecify.annotations.NullMarked;
