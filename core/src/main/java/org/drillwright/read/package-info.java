/** From YAML to the model, with the place of every key and value; the only user of the YAML library. */
@NullMarked
package org.drillwright.read;

import org.jspecify.annotations.NullMarked;
