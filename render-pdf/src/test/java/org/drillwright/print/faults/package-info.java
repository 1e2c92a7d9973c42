/** The program when something around it breaks: the disk is full, the plug is pulled, two run at once. */
@NullMarked
package org.drillwright.print.faults;

import org.jspecify.annotations.NullMarked;
