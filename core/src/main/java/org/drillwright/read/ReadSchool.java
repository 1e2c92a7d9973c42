package org.drillwright.read;

import org.drillwright.model.School;
import org.drillwright.plan.roster.Habits;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.table.TableSettings;

/** A school's settings, its habits in class and those of its tables, together with the file they were read from and the place of each. */
public record ReadSchool(School school, Habits habits, TableSettings tables, SourceFile file, SourcePlaces places) {}
