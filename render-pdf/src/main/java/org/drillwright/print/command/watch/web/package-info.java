/** A small server for this computer only: which requests are answered, with which headers, and news as it happens. */
@NullMarked
package org.drillwright.print.command.watch.web;

import org.jspecify.annotations.NullMarked;
