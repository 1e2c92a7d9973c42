@org.jspecify.annotations.NullMarked
package org.drillwright.explain;
