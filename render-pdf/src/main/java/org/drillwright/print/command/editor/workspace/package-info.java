/** What stands open in an editor, each text in its school; knows no protocol. */
@NullMarked
package org.drillwright.print.command.editor.workspace;

import org.jspecify.annotations.NullMarked;
