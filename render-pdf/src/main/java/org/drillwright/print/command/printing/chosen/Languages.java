package org.drillwright.print.command.printing.chosen;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Range;
import org.drillwright.print.layout.words.AuthorsWords;
import org.drillwright.print.layout.words.TextPlace;
import org.drillwright.print.text.Lettering;
import org.drillwright.translation.Rendering;

/** What the reading of a drill tells of its words: in which language they are, and what its distances name. */
public final class Languages {

    private Languages() {}

    static AuthorsWords of(Subject drill, School school) {
        String most = drill(drill, school);
        return new AuthorsWords(
                Locale.forLanguageTag(most),
                Locale.forLanguageTag(most(drill, turns(drill, Side.LEADER), most)),
                Locale.forLanguageTag(most(drill, turns(drill, Side.FOLLOWER), most)),
                ends(drill));
    }

    /** Of a drill said in another language. */
    static AuthorsWords of(Rendering said, School school) {
        if (said.drill().drill().madeFrom().isEmpty()) {
            return of(said.original(), school);
        }
        Locale into = school.language().locale();
        Map<TextPlace, Locale> apart = new HashMap<>();
        said.apart().forEach((place, language) -> apart.put(TextPlace.of(place.text()), language.locale()));
        Map<TextPlace, AuthorsWords.Behind> behind = new HashMap<>();
        said.beside()
                .forEach((place, words) -> behind.put(
                        TextPlace.of(place.text()),
                        new AuthorsWords.Behind(
                                Rendering.inBrackets(words).strip(), said.from().locale())));
        return new AuthorsWords(into, into, into, ends(said.original()), apart, behind);
    }

    /** The tag of the language that most of a drill's turns are read in; the school's for a drill without turns. */
    public static String drill(Subject drill, School school) {
        Stream<String> all = Stream.of(Side.values()).flatMap(side -> turns(drill, side));
        return most(drill, all, school.language().word());
    }

    private static Stream<String> turns(Subject drill, Side side) {
        return drill.drill().steps().stream()
                .flatMap(step -> step.turn(side).stream())
                .map(Turn::say)
                .filter(said -> !said.isBlank());
    }

    /** @param usual for none, and where two have as many */
    private static String most(Subject drill, Stream<String> turns, String usual) {
        Map<String, Long> languages = turns.map(said ->
                        Lettering.language(said).orElseGet(() -> drill.reader().tag(said)))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return languages.entrySet().stream()
                .max(Map.Entry.<String, Long>comparingByValue()
                        .thenComparing(Map.Entry::getKey, Comparator.comparing(usual::equals)))
                .map(Map.Entry::getKey)
                .orElse(usual);
    }

    private static Set<Integer> ends(Subject drill) {
        List<Step> steps = drill.drill().steps();
        List<Count> counts = drill.replay().counts();
        Set<Integer> ends = new HashSet<>();
        for (int at = 0; at < Math.min(steps.size(), counts.size()); at++) {
            Optional<MeasureCue> cue = drill.reader().cue(steps.get(at).distance(), drill.tongue());
            if (cue.filter(MeasureCue::isOne).isPresent()) {
                Measure named = cue.get().from();
                if (!isAt(named, counts.get(at).begin().measure())
                        && isAt(named, counts.get(at).end().measure())) {
                    ends.add(at);
                }
            }
        }
        return ends;
    }

    private static boolean isAt(Measure named, Range measure) {
        return measure.isKnown() && measure.meets(Range.of(named));
    }
}
