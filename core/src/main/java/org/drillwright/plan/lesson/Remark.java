package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.drillwright.model.Weapon;
import org.drillwright.plan.hall.LaneLayout;

/** What the instructor should know of a lesson before it is taught, or could cut. Drills are told by their ids. */
public sealed interface Remark {

    /** In English. */
    String sentence();

    /** Of several, in order. */
    static List<String> sentences(List<? extends Remark> remarks) {
        return remarks.stream().map(Remark::sentence).toList();
    }

    /** A drill changed place: the other, before which it stands now, needs it. */
    record Moved(String drill, String before) implements Remark {
        @Override
        public String sentence() {
            return drill + " moved before " + before + ", which needs it.";
        }
    }

    /** Not all drills fit. */
    record LeftOut(Duration over, List<String> drills) implements Remark {
        public LeftOut {
            drills = List.copyOf(drills);
        }

        @Override
        public String sentence() {
            return "Together they take " + shown(over) + " more than the class lasts; left out: "
                    + String.join(", ", drills) + ".";
        }
    }

    /** Not even those fit that must be included. */
    record TooLong(Duration over) implements Remark {
        @Override
        public String sentence() {
            return "The drills that must be included take " + shown(over) + " more than the class lasts.";
        }
    }

    /**
     * A block of the school's own without which the drills would fit.
     *
     * @param all all that were wished for, not only those that must be included
     */
    record Without(String block, Duration length, boolean all) implements Remark {
        @Override
        public String sentence() {
            return "Without " + block + " (" + shown(length) + ") they would " + (all ? "all fit." : "fit.");
        }
    }

    /** So many repetitions less of each drill, and all would fit. */
    record FewerRepetitions(List<Less> off, Duration saved) implements Remark {
        public FewerRepetitions {
            off = List.copyOf(off);
        }

        @Override
        public String sentence() {
            return "To keep them all, cut repetitions: "
                    + off.stream()
                            .map(less -> less.drill() + " " + less.repetitions())
                            .collect(Collectors.joining(", "))
                    + "; that saves " + shown(saved) + ".";
        }
    }

    /** How many repetitions of a drill could be cut. */
    record Less(String drill, int repetitions) {}

    /** No cutting of repetitions makes all drills fit. */
    record NeverAll() implements Remark {
        @Override
        public String sentence() {
            return "Even at one repetition each they don't all fit.";
        }
    }

    /** Drills of which each needs the next, and the last the first. */
    record Circle(List<String> drills) implements Remark {
        public Circle {
            drills = List.copyOf(drills);
        }

        @Override
        public String sentence() {
            return "These need one another in a circle: " + String.join(", ", drills) + ".";
        }
    }

    /** A block whose turn it was to fill spare minutes, longer than these. */
    record NoRoom(List<Passed> blocks) implements Remark {
        public NoRoom {
            blocks = List.copyOf(blocks);
        }

        @Override
        public String sentence() {
            return "No room for "
                    + blocks.stream()
                            .map(block -> block.name() + " (" + shown(block.length()) + ")")
                            .collect(Collectors.joining(", "))
                    + ".";
        }
    }

    /** A block that was passed over. */
    record Passed(String name, Duration length) {}

    /** The share of practice is small, in percent. */
    record LittlePractice(long percent) implements Remark {
        @Override
        public String sentence() {
            return "Only " + percent + " % of the class is practice; aim for 50 %, and at least 40 %.";
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
        public String sentence() {
            int last = people.size() - 1;
            String who = (last == 0 ? "" : String.join(", ", people.subList(0, last)) + " and ") + people.get(last);
            return drill + " needs " + need + ", which " + (all ? "nobody here can" : who + " can't") + " do yet.";
        }
    }

    /** A drill of another weapon than the class's. */
    record OtherWeapon(String drill, Weapon weapon) implements Remark {
        @Override
        public String sentence() {
            return drill + " isn't a drill for " + weapon.word() + ".";
        }
    }

    /** The hall holds no lane. */
    record NoLane(LaneLayout layout) implements Remark {
        @Override
        public String sentence() {
            return layout.sentence();
        }
    }

    /** There are more pairs than lanes. */
    record Waves(int lanes, int waves) implements Remark {
        @Override
        public String sentence() {
            return "The hall holds " + lanes + (lanes == 1 ? " pair" : " pairs")
                    + " at once, so each round is worked in " + waves + " waves; the time allows for that.";
        }
    }

    private static String shown(Duration duration) {
        return duration.toMinutes() + ":" + String.format(Locale.ROOT, "%02d", duration.toSecondsPart()) + " min";
    }
}
