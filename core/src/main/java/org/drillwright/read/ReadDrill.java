package org.drillwright.read;

import org.drillwright.model.Drill;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;

/** A drill together with the file it was read from and the place of each of its values. */
public record ReadDrill(Drill drill, SourceFile file, SourcePlaces places) {}
