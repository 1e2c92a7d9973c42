package org.drillwright.read;

import org.drillwright.model.School;
import org.drillwright.plan.roster.Habits;
import org.drillwright.source.Places;
import org.drillwright.source.SourceFile;

/** A school's settings and its habits in class, together with the file they were read from and the place of each. */
public record ReadSchool(School school, Habits habits, SourceFile file, Places places) {}
