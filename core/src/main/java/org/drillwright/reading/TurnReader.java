package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.grammar.Chart;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Frames;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Utterance;

/** Reads the words of a turn, an opening, a closing or a start; never throws, whatever stands in them. */
public final class TurnReader {

    /** Words of one sentence that are looked at; what stands behind them is unread. */
    private static final int LONGEST = 60;

    private static final int REMEMBERED = 4000;
    /** The resource that lists the languages, a tag a line. */
    private static final String TONGUES = "tongues";

    private static final List<String> FRAMES = List.of("feet", "strokes", "parries", "blade", "answers", "courtesy");

    private final List<Tongue> tongues;
    private final Frames frames;
    private final Map<String, Utterance> known = new LinkedHashMap<>();

    private TurnReader(List<Tongue> tongues, Frames frames) {
        this.tongues = List.copyOf(tongues);
        this.frames = frames;
    }

    /** The reader that comes with the program. */
    public static TurnReader standard() {
        return Standard.READER;
    }

    private static final class Standard {
        private static final TurnReader READER = new TurnReader(
                Tongue.lines(TONGUES).stream()
                        .filter(tag -> !tag.isBlank())
                        .map(tag -> Tongue.load(tag.strip(), List.of()))
                        .toList(),
                Frames.read(FRAMES.stream()
                        .flatMap(name -> Tongue.lines("frames/" + name + ".frames").stream())
                        .toList()));
    }

    /** Reads a text in the language that accounts for most of its words. */
    public Utterance read(String text) {
        synchronized (known) {
            Utterance before = known.get(text);
            if (before != null) {
                return before;
            }
        }
        Utterance read = tongues.stream()
                .sorted(Comparator.comparingLong(tongue -> -tongue.known(text)))
                .map(tongue -> new Attempt(read(text, tongue)))
                .reduce((one, other) -> one.gaps() <= other.gaps() ? one : other)
                .orElseThrow()
                .utterance();
        synchronized (known) {
            if (known.size() >= REMEMBERED) {
                known.clear();
            }
            known.put(text, read);
        }
        return read;
    }

    private record Attempt(Utterance utterance) {
        int gaps() {
            return utterance.unread().size();
        }
    }

    private Utterance read(String text, Tongue tongue) {
        Clauses clauses = new Clauses();
        for (List<Token> whole : tongue.lexicon().sentences(text)) {
            List<Token> sentence = whole.subList(0, Math.min(LONGEST, whole.size()));
            clauses.sentence(sentence, divisions(sentence, tongue).get(0).pieces());
            whole.subList(sentence.size(), whole.size()).forEach(clauses::beyond);
        }
        return clauses.utterance();
    }

    private List<Cover.Division> divisions(List<Token> sentence, Tongue tongue) {
        Chart<Meant> chart = Chart.of(tongue.lexicon(), tongue.grammar(), frames, sentence);
        return Cover.of(tongue, sentence, chart);
    }

    /** Each part of a text with what it was taken for, for those who write a language. */
    public List<String> account(String text, String tag) {
        List<String> lines = new ArrayList<>();
        for (Tongue tongue : tongues) {
            if (tongue.tag().equals(tag)) {
                for (List<Token> sentence : tongue.lexicon().sentences(text)) {
                    divisions(sentence, tongue).stream()
                            .limit(3)
                            .forEach(division -> lines.add(told(sentence, division)));
                }
            }
        }
        return lines;
    }

    private static String told(List<Token> sentence, Cover.Division division) {
        StringBuilder line = new StringBuilder(String.format(java.util.Locale.ROOT, "%.1f", division.cost()));
        for (Piece piece : division.pieces()) {
            line.append(" | ").append(piece.kind()).append(' ');
            sentence.subList(piece.from(), piece.to())
                    .forEach(token -> line.append(token.folded()).append(' '));
            line.append(piece.meant().isEmpty() ? "" : "= " + piece.meant());
        }
        return line.toString();
    }

    Set<String> tags() {
        return Set.copyOf(tongues.stream().map(Tongue::tag).toList());
    }

    Stream<Tongue> tongues() {
        return tongues.stream();
    }
}
