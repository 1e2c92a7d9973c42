/** Cards of any drill, tried as {@code org.drillwright.fuzz} of core is (see its {@code docs/fuzzing.md}). */
package org.drillwright.print.fuzz;
