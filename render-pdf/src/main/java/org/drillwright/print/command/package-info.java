/**
 * The command line: arguments, exit codes, the only user of standard streams, and the only place that exits. Nobody
 * imports it.
 */
@NullMarked
package org.drillwright.print.command;

import org.jspecify.annotations.NullMarked;
