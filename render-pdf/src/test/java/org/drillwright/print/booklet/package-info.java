@org.jspecify.annotations.NullMarked
package org.drillwright.print.booklet;
