package org.drillwright.report.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Three;
import org.drillwright.plan.roster.Naming;
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/** What is said of those who work together. */
final class GroupWords {

    private GroupWords() {}

    /** People and helper, such as {@code Ash and Bo} or {@code Cy with the instructor}. */
    static Message people(Group group, Naming names) {
        Message people = Message.all(group.people().stream()
                .map(name -> Message.plain(names.of(name)))
                .toList());
        return group.helper()
                .map(name -> said("with", people, helper(name, names)))
                .orElse(people);
    }

    /** Whoever teaches is said, not named. */
    private static Message helper(String name, Naming names) {
        return name.equals(History.INSTRUCTOR) ? said("the.instructor") : Message.plain(names.of(name));
    }

    /** What is to be said of a group beside its names; empty for a pair. */
    public static Message remark(Group group, Naming names) {
        Optional<Message> eyes = group.eyes().map(name -> helper(name, names));
        return switch (group.kind()) {
            case PAIR, HELPED -> Message.none();
            case WATCHED -> eyes.map(name -> said("watched", name)).orElse(Message.none());
            case THREE -> three(group.middle().map(names::of), eyes);
            case SOLO -> said("solo");
            case BOTH_NEW -> said("both.new");
        };
    }

    private static Message three(Optional<String> middle, Optional<Message> eyes) {
        if (middle.isEmpty()) {
            return eyes.map(name -> said("three.watched", name)).orElseGet(() -> said("three"));
        }
        return eyes.map(name -> said("three.middle.watched", middle.get(), name))
                .orElseGet(() -> said("three.middle", middle.get()));
    }

    /** Who works with whom in a three, and how many repetitions end with those of the pairs. */
    public static List<Message> threes(PairingPlan pairs, ToIntFunction<String> repetitions) {
        return Three.of(pairs, repetitions).stream().map(GroupWords::turns).toList();
    }

    private static Message turns(Three three) {
        if (three.canEndWithPairs()) {
            String key = three.middle() ? "middle.fewer" : "alike.fewer";
            return Message.counted(GroupWords.class, key, three.fewer(), three.drill(), three.repetitions());
        }
        return said(three.middle() ? "middle.twice" : "alike.half", three.drill());
    }

    private static Message said(String key, Object... values) {
        return Message.of(GroupWords.class, key, values);
    }
}
