/**
 * Drills read, played, judged and planned. What a library may use is exported to all: the room {@code school}, which is asked
 * first, and whatever its answers are made of. The rest is for the program's own other half, or for nobody.
 */
module org.drillwright.core {
    requires static org.jspecify;
    requires com.fasterxml.jackson.core;
    requires org.jgrapht.core;
    requires org.yaml.snakeyaml;

    exports org.drillwright.check;
    exports org.drillwright.explain;
    exports org.drillwright.mark;
    exports org.drillwright.model;
    exports org.drillwright.notation;
    exports org.drillwright.phrase;
    exports org.drillwright.plan.evening;
    exports org.drillwright.plan.hall;
    exports org.drillwright.plan.kept;
    exports org.drillwright.plan.lesson;
    exports org.drillwright.plan.pair;
    exports org.drillwright.plan.published;
    exports org.drillwright.plan.roster;
    exports org.drillwright.plan.rounds;
    exports org.drillwright.plan.term;
    exports org.drillwright.plan.walk;
    exports org.drillwright.read;
    exports org.drillwright.reading;
    exports org.drillwright.register;
    exports org.drillwright.report;
    exports org.drillwright.school;
    exports org.drillwright.source;
    exports org.drillwright.table;
    exports org.drillwright.terms;
    exports org.drillwright.wording;
    exports org.drillwright.check.folder to
            org.drillwright.print;
    exports org.drillwright.check.jury to
            org.drillwright.print;
    exports org.drillwright.editing to
            org.drillwright.print;
    exports org.drillwright.autofix to
            org.drillwright.print;
    exports org.drillwright.plan.attendance to
            org.drillwright.print;
    exports org.drillwright.plan.partner to
            org.drillwright.print;
    exports org.drillwright.plan.progress to
            org.drillwright.print;
    exports org.drillwright.plan.schedule to
            org.drillwright.print;
    exports org.drillwright.schema to
            org.drillwright.print;
    exports org.drillwright.report.plan to
            org.drillwright.print;
    exports org.drillwright.report.calendar to
            org.drillwright.print;
    exports org.drillwright.formatter to
            org.drillwright.print;
    exports org.drillwright.translation to
            org.drillwright.print;
}
