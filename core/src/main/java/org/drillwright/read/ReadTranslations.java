package org.drillwright.read;

import org.drillwright.model.Translations;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;

/** A school's translations into one language, the file they were read from and the place of each. */
public record ReadTranslations(Translations translations, SourceFile file, SourcePlaces places) {}
