/** The language server, asked by LSP4J's own client over pipes. */
@org.jspecify.annotations.NullMarked
package org.drillwright.print.command.editor.protocol;
