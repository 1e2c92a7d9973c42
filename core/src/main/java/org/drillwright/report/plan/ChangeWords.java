package org.drillwright.report.plan;

import java.util.List;
import org.drillwright.plan.pair.Changeover;
import org.drillwright.plan.pair.Walk;
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/** Says how people change over. */
public final class ChangeWords {

    private ChangeWords() {}

    /** One sentence for each, the rule last. */
    public static List<Message> of(List<Changeover> changes) {
        return changes.stream().map(ChangeWords::sentence).toList();
    }

    private static Message sentence(Changeover change) {
        if (change instanceof Changeover.Still still) {
            return said("still", Message.words(still.people()));
        } else if (change instanceof Changeover.Unformed unformed) {
            return said("no.forming", unformed.drill(), why(unformed));
        } else if (change instanceof Changeover.Crossing crossing) {
            return crossing.people().isEmpty()
                    ? said("crossed.nobody", crossing.after())
                    : said("crossed", crossing.after(), listed(crossing.people()));
        } else if (change instanceof Changeover.LineA line) {
            return lineA(line);
        } else if (change instanceof Changeover.LineB line) {
            return said("line.b", listed(line.walk().moves()));
        } else if (change instanceof Changeover.Unpaired unpaired) {
            return said(unpaired.joins() ? "joins.pair" : "rests");
        } else if (change instanceof Changeover.PostUp up) {
            return said(up.isAlways() ? "post.up.always" : "post.up");
        } else if (change instanceof Changeover.Read read) {
            return said(read.isBetter() ? "read.sheet.meet" : "read.sheet");
        }
        return said("ring");
    }

    private static Message why(Changeover.Unformed unformed) {
        return switch (unformed.why()) {
            case TOO_MANY_NEW -> said("too.many.new");
            case ONE_LINE ->
                unformed.helpers() == 0
                        ? said("one.line", unformed.together(), unformed.others())
                        : said("one.line.helped", unformed.together(), unformed.others(), unformed.helpers());
            case UNEVEN -> said("uneven");
            case REST -> said("may.not.join");
        };
    }

    private static Message lineA(Changeover.LineA line) {
        Walk walk = line.walk();
        Message people = listed(walk.stays());
        if (line.isAll()) {
            return said("line.a", people);
        }
        return walk.from() == walk.to()
                ? said("line.a.round", walk.from(), people)
                : said("line.a.rounds", walk.from(), walk.to(), people);
    }

    private static Message listed(List<String> names) {
        return Message.listed(names.stream().map(ChangeWords::named).toList());
    }

    private static Message named(String name) {
        return name.equals(Walk.REST)
                ? said("nobody")
                : name.equals(History.INSTRUCTOR) ? said("the.instructor") : Message.plain(name);
    }

    private static Message said(String key, Object... values) {
        return Message.of(ChangeWords.class, key, values);
    }
}
