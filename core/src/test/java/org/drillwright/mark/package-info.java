@org.jspecify.annotations.NullMarked
package org.drillwright.mark;
