package org.drillwright.print.sheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.lesson.Lesson;
import org.drillwright.plan.lesson.LessonPart;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Shortage;
import org.drillwright.plan.pair.Three;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.sheet.wall.Supervision;
import org.drillwright.print.sheet.wall.WallText;
import org.drillwright.report.plan.Clock;

/** Says on a sheet how a class is timed, and what is to be known of it. Names no student. */
record LessonSentences(ClassPlan plan, HandWords words) {

    /** Whether it fits, and the share of practice. */
    String time() {
        LessonPlan lesson = plan.lesson();
        String fits = lesson.fits()
                ? words.text(HandWord.SPARE, Clock.of(lesson.spare()))
                : words.text(HandWord.OVER, Clock.of(lesson.spare().negated()));
        return words.text(
                HandWord.TIME,
                Clock.of(lesson.needed()),
                Clock.of(lesson.length()),
                fits,
                Math.round(100 * lesson.practiceShare()));
    }

    String people() {
        return words.counted(HandWord.PEOPLE, plan.here().size());
    }

    String mode() {
        return words.text(plan.brief().mode() == Mode.LEARNING ? HandWord.LEARNING : HandWord.TRAINING);
    }

    String name(LessonPart block) {
        return switch (block.kind()) {
            case OPENING -> words.text(HandWord.OPENING_SALUTE);
            case WARM_UP -> block.name().equals(Lesson.PLAIN_WARM_UP) ? words.text(HandWord.WARM_UP) : block.name();
            case DRILL -> plan.title(block.name());
            case BEFORE, BETWEEN, SPARE, AFTER -> block.name();
            case CLOSING -> words.text(HandWord.CLOSING_SALUTE);
        };
    }

    /** Its name, how long it lasts, and what is done in it if it is the school's own. */
    String timed(LessonPart block) {
        return words.text(
                block.how().isEmpty() ? HandWord.PART : HandWord.PART_HOW,
                name(block),
                Clock.of(block.length()),
                block.how());
    }

    /** Rounds and repetitions of a drill; why a block is there that only fills the time left. */
    String work(LessonPart block) {
        return plan.lesson().drills().stream()
                .filter(load ->
                        block.kind() == LessonPart.Kind.DRILL && load.drill().equals(block.name()))
                .findFirst()
                .map(this::work)
                .orElse(block.kind() == LessonPart.Kind.SPARE ? words.text(HandWord.FILLS) : "");
    }

    private String work(DrillLoad load) {
        String times = times(load.repetitions());
        String each = load.roles() > 1 ? words.text(HandWord.EACH_ROLE, times) : times;
        return load.rounds() > 1 ? words.text(HandWord.PARTNERS, load.rounds(), each) : each;
    }

    private String times(long count) {
        return words.counted(HandWord.TIMES, count);
    }

    String cards(CardNeed need) {
        String cards = words.counted(HandWord.CARDS, need.count(), need.set());
        return need.number() > 0 ? words.text(HandWord.CARD_NUMBER, cards, need.number()) : cards;
    }

    /** What the instructor should know, a sentence each. */
    List<String> toKnow(PairingPlan pairs) {
        List<String> sentences = new ArrayList<>();
        plan.remarks().forEach(remark -> sentences.add(remark(remark)));
        plan.lesson().moved().forEach(remark -> sentences.add(remark(remark)));
        plan.lesson().advice().forEach(remark -> sentences.add(remark(remark)));
        pairs.watched()
                .forEach(watch -> sentences.add(Supervision.choice(watch, plan.title(watch.drill()), words.evening())));
        Map<String, String> drills = new LinkedHashMap<>();
        for (Shortage shortage : pairs.shortages()) {
            drills.merge(shortage(shortage), plan.title(shortage.drill()), (some, more) -> some + ", " + more);
        }
        drills.forEach((sentence, titles) -> sentences.add(words.text(HandWord.TITLED, titles, sentence)));
        Three.of(pairs, plan::repetitions)
                .forEach(three -> sentences.add(words.text(HandWord.TITLED, plan.title(three.drill()), three(three))));
        return sentences;
    }

    private String remark(Remark remark) {
        if (remark instanceof Remark.Moved moved) {
            return words.text(HandWord.MOVED, plan.title(moved.drill()), plan.title(moved.before()));
        } else if (remark instanceof Remark.LeftOut left) {
            return words.text(HandWord.LEFT_OUT, Clock.of(left.over()), titles(left.drills()));
        } else if (remark instanceof Remark.TooLong over) {
            return words.text(HandWord.TOO_LONG, Clock.of(over.over()));
        } else if (remark instanceof Remark.Without without) {
            HandWord fits = without.all() ? HandWord.WITHOUT_ALL : HandWord.WITHOUT;
            return words.text(fits, without.block(), Clock.of(without.length()));
        } else if (remark instanceof Remark.FewerRepetitions fewer) {
            String off = fewer.off().stream()
                    .map(less -> words.text(HandWord.LESS, plan.title(less.drill()), less.repetitions()))
                    .collect(Collectors.joining(", "));
            return words.text(HandWord.FEWER, off, Clock.of(fewer.saved()));
        } else if (remark instanceof Remark.NeverAll) {
            return words.text(HandWord.NEVER_ALL);
        } else if (remark instanceof Remark.Circle circle) {
            return words.text(HandWord.CIRCLE, titles(circle.drills()));
        } else if (remark instanceof Remark.NoRoom passed) {
            return words.text(
                    HandWord.NO_ROOM,
                    passed.blocks().stream()
                            .map(block -> lasting(block.name(), block.length()))
                            .collect(Collectors.joining(", ")));
        } else if (remark instanceof Remark.LittlePractice little) {
            return words.text(HandWord.LITTLE_PRACTICE, little.percent());
        } else if (remark instanceof Remark.Unmet unmet) {
            return words.text(
                    HandWord.UNMET,
                    plan.title(unmet.drill()),
                    plan.title(unmet.need()),
                    unmet.people().size());
        } else if (remark instanceof Remark.OtherWeapon other) {
            return words.text(
                    HandWord.OTHER_WEAPON,
                    plan.title(other.drill()),
                    words.labels().weapon(other.weapon()));
        } else if (remark instanceof Remark.NoLane none) {
            return new HallSentences(words).lanes(none.layout());
        } else if (remark instanceof Remark.Waves waves) {
            return words.text(HandWord.WAVES, waves.lanes(), waves.waves());
        }
        throw new IllegalStateException("a remark without words: " + remark);
    }

    private String lasting(String name, Duration length) {
        return words.text(HandWord.NAMED_LENGTH, name, Clock.of(length));
    }

    private String titles(List<String> drills) {
        return drills.stream().map(plan::title).collect(Collectors.joining(", "));
    }

    private String shortage(Shortage shortage) {
        int all = shortage.fresh() + shortage.knowing();
        boolean helped = shortage.helped() == 1;
        if (shortage.parity() && all == 1) {
            return helped ? words.text(HandWord.ALONE_HELPED, helpers(shortage)) : words.text(HandWord.ALONE);
        }
        if (shortage.parity()) {
            return helped ? words.text(HandWord.ODD_HELPED, all, helpers(shortage)) : words.text(HandWord.ODD, all);
        }
        return shortage.fresh() > shortage.knowing()
                ? words.text(
                        HandWord.TOO_MANY_NEW, shortage.fresh(), shortage.knowing(), shortage.pairs(), shortage.left())
                : words.text(HandWord.KEPT_APART, all, shortage.pairs(), shortage.left());
    }

    private String helpers(Shortage shortage) {
        return shortage.helpers().stream()
                .map(name -> words.evening().helper(name, Naming.full()))
                .reduce((some, next) -> words.evening().text(WallText.OR, some, next))
                .orElse("");
    }

    private String three(Three three) {
        String turns = words.text(three.middle() ? HandWord.THREE_MIDDLE : HandWord.THREE_ALIKE);
        if (three.canEndWithPairs()) {
            return words.text(HandWord.THREE_FEWER, turns, times(three.fewer()), three.repetitions());
        }
        return words.text(three.middle() ? HandWord.THREE_TWICE : HandWord.THREE_HALF, turns);
    }
}
