package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.model.Weapon;

/** Any drill that is written reads back as that drill. */
class DrillWriterProperties {

    @Property(tries = 1000)
    void a_drill_reads_back_equal(@ForAll("drills") Drill drill) {
        String text = DrillWriter.write(drill);
        assertEquals(drill, Files.drill(text), text);
        assertEquals(List.of(), Files.read(text).findings(), text);
    }

    private record Head(String title, String level, Form form, Weapon weapon, Hands hands, int repeat, boolean swap) {}

    private record Prose(String purpose, String start, String opening, String closing, String note) {}

    private record Lists(
            List<String> worksOn, List<String> needs, List<String> gear, List<String> cautions, List<String> tags) {}

    private record Rest(
            Optional<Duration> tempo,
            Optional<String> variantOf,
            Optional<LocalDate> revised,
            Map<String, String> accept) {}

    @Provide
    Arbitrary<Drill> drills() {
        return Combinators.combine(
                        heads(), proses(), lists(), rests(), steps().list().ofMaxSize(4))
                .as((head, prose, lists, rest, steps) -> new Drill(
                        "a-drill",
                        head.title(),
                        head.level(),
                        head.form(),
                        head.weapon(),
                        head.hands(),
                        lists.worksOn(),
                        lists.needs(),
                        lists.gear(),
                        prose.purpose(),
                        prose.start(),
                        prose.opening(),
                        steps,
                        prose.closing(),
                        head.repeat(),
                        head.swap(),
                        rest.tempo(),
                        prose.note(),
                        lists.cautions(),
                        rest.variantOf(),
                        lists.tags(),
                        rest.revised(),
                        rest.accept()));
    }

    private static Arbitrary<Head> heads() {
        return Combinators.combine(
                        Texts.present(8),
                        Arbitraries.of("beginner", "intermediate", "training"),
                        Arbitraries.of(Form.class),
                        Arbitraries.of(Weapon.class),
                        Arbitraries.of(Hands.class),
                        Arbitraries.integers().between(1, 999),
                        Arbitraries.of(true, false))
                .as(Head::new);
    }

    private static Arbitrary<Prose> proses() {
        return Combinators.combine(Texts.text(8), Texts.text(12), Texts.text(8), Texts.text(8), Texts.text(20))
                .as(Prose::new);
    }

    private static Arbitrary<Lists> lists() {
        return Combinators.combine(
                        Arbitraries.of(School.DEFAULT.fundamentals()).list().ofMaxSize(3),
                        Texts.present(4).list().ofMaxSize(3),
                        Texts.present(4).list().ofMaxSize(3),
                        Texts.present(8).list().ofMaxSize(3),
                        Texts.present(4).list().ofMaxSize(3))
                .as(Lists::new);
    }

    private static Arbitrary<Rest> rests() {
        return Combinators.combine(
                        Arbitraries.longs()
                                .between(1, 3_600_000)
                                .map(Duration::ofMillis)
                                .optional(),
                        Texts.present(4).optional(),
                        Arbitraries.integers()
                                .between(0, 60_000)
                                .map(LocalDate::ofEpochDay)
                                .optional(),
                        Arbitraries.maps(Texts.present(4), Texts.present(8)).ofMaxSize(3))
                .as(Rest::new);
    }

    private static Arbitrary<Step> steps() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 999).optional(),
                        Texts.text(3),
                        turns().optional(),
                        turns().optional(),
                        Texts.text(3),
                        Texts.text(8),
                        Texts.text(8))
                .as((number, call, leader, follower, distance, safety, note) -> new Step(
                        number.map(OptionalInt::of).orElse(OptionalInt.empty()),
                        call,
                        leader,
                        follower,
                        distance,
                        safety,
                        note));
    }

    private static Arbitrary<Turn> turns() {
        return Combinators.combine(Texts.present(10), Texts.text(6)).as(Turn::new);
    }
}
