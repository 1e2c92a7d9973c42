package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.drillwright.model.Weapon;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** What the instructor should know of a lesson before it is taught, or could cut. Drills are told by their ids. */
public sealed interface Remark {

    Message sentence();

    /** Of several, in order. */
    static List<Message> sentences(List<? extends Remark> remarks) {
        return remarks.stream().map(Remark::sentence).toList();
    }

    /** A drill changed place: the other, before which it stands now, needs it. */
    record Moved(String drill, String before) implements Remark {
        @Override
        public Message sentence() {
            return said("moved", drill, before);
        }
    }

    /** Not all drills fit. */
    record LeftOut(Duration over, List<String> drills) implements Remark {
        public LeftOut {
            drills = List.copyOf(drills);
        }

        @Override
        public Message sentence() {
            return said("left.out", shown(over), Message.words(drills));
        }
    }

    /** Not even those fit that must be included. */
    record TooLong(Duration over) implements Remark {
        @Override
        public Message sentence() {
            return said("too.long", shown(over));
        }
    }

    /**
     * A block of the school's own without which the drills would fit.
     *
     * @param all all that were wished for, not only those that must be included
     */
    record Without(String block, Duration length, boolean all) implements Remark {
        @Override
        public Message sentence() {
            return said(all ? "without.all" : "without", block, shown(length));
        }
    }

    /** So many repetitions less of each drill, and all would fit. */
    record FewerRepetitions(List<Less> off, Duration saved) implements Remark {
        public FewerRepetitions {
            off = List.copyOf(off);
        }

        @Override
        public Message sentence() {
            List<String> less = off.stream()
                    .map(one -> one.drill() + " " + one.repetitions())
                    .toList();
            return said("fewer", Message.words(less), shown(saved));
        }
    }

    /** How many repetitions of a drill could be cut. */
    record Less(String drill, int repetitions) {}

    /** No cutting of repetitions makes all drills fit. */
    record NeverAll() implements Remark {
        @Override
        public Message sentence() {
            return said("never.all");
        }
    }

    /** Drills of which each needs the next, and the last the first. */
    record Circle(List<String> drills) implements Remark {
        public Circle {
            drills = List.copyOf(drills);
        }

        @Override
        public Message sentence() {
            return said("circle", Message.words(drills));
        }
    }

    /** A block whose turn it was to fill spare minutes, longer than these. */
    record NoRoom(List<Passed> blocks) implements Remark {
        public NoRoom {
            blocks = List.copyOf(blocks);
        }

        @Override
        public Message sentence() {
            List<String> passed = blocks.stream()
                    .map(block -> block.name() + " (" + shown(block.length()) + ")")
                    .toList();
            return said("no.room", Message.words(passed));
        }
    }

    /** A block that was passed over. */
    record Passed(String name, Duration length) {}

    /** The share of practice is small, in percent. */
    record LittlePractice(long percent) implements Remark {
        @Override
        public Message sentence() {
            return said("little.practice", percent);
        }
    }

    /**
     * Some of those here can't do what a drill needs, and this class doesn't teach it.
     *
     * @param all whether these are all of several who are here
     */
    record Unmet(String drill, String need, List<String> people, boolean all) implements Remark {
        public Unmet {
            people = List.copyOf(people);
        }

        @Override
        public Message sentence() {
            return all
                    ? said("unmet.all", drill, need)
                    : Message.counted(
                            Remark.class,
                            "unmet",
                            people.size(),
                            drill,
                            need,
                            Message.all(people.stream().map(Message::plain).toList()));
        }
    }

    /** A drill of another weapon than the class's. */
    record OtherWeapon(String drill, Weapon weapon) implements Remark {
        @Override
        public Message sentence() {
            return said("other.weapon", drill, Terms.of(weapon));
        }
    }

    /** The hall holds no lane. */
    record NoLane(LaneLayout layout) implements Remark {
        @Override
        public Message sentence() {
            return layout.sentence();
        }
    }

    /** There are more pairs than lanes. */
    record Waves(int lanes, int waves) implements Remark {
        @Override
        public Message sentence() {
            return Message.counted(Remark.class, "waves", lanes, waves);
        }
    }

    private static Message said(String key, Object... values) {
        return Message.of(Remark.class, key, values);
    }

    private static String shown(Duration duration) {
        return duration.toMinutes() + ":" + String.format(Locale.ROOT, "%02d", duration.toSecondsPart()) + " min";
    }
}
