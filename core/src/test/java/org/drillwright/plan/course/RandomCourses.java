package org.drillwright.plan.course;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/** Small hard courses, a number each: too few minutes, chains of needs, exams that are too early, people who come and go. */
final class RandomCourses {

    private RandomCourses() {}

    static Course of(int seed) {
        Random random = new Random(7_000 + seed);
        int people = random.nextInt(2) * (1 + random.nextInt(4));
        int classes = people > 0 ? 4 + random.nextInt(2) : 4 + random.nextInt(3);
        int drills = people > 0 ? 3 + random.nextInt(2) : 3 + random.nextInt(3);
        Courses course = Courses.of(classes).minutes(15 + 5 * random.nextInt(6)).newAClass(1 + random.nextInt(2));
        if (random.nextInt(3) == 0) {
            course.noNew(random.nextInt(classes));
        }
        boolean exam = random.nextInt(3) > 0;
        if (exam) {
            course.examBehind(1 + random.nextInt(classes - 1));
        }
        for (int at = 0; at < classes; at++) {
            List<Double> chances = new ArrayList<>();
            for (int person = 0; person < people; person++) {
                chances.add((2 + random.nextInt(8)) / 10.0);
            }
            course.people(people, at, chances);
        }
        for (int drill = 0; drill < drills; drill++) {
            List<Integer> needs = drill > 0 && random.nextInt(2) == 0 ? List.of(random.nextInt(drill)) : List.of();
            boolean past = needs.isEmpty() && random.nextInt(4) == 0;
            course.drill(
                    "D" + drill,
                    1 + random.nextInt(3),
                    exam && random.nextInt(2) == 0 ? 3 : 0,
                    random.nextInt(3) == 0 ? OptionalInt.of(2 + random.nextInt(4)) : OptionalInt.empty(),
                    needs,
                    past ? List.of(Courses.week(-1 - random.nextInt(4))) : List.of());
        }
        return course.build();
    }
}
