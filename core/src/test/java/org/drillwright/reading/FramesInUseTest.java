package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.drillwright.grammar.Chart;
import org.drillwright.meaning.Meant;
import org.drillwright.model.Side;
import org.drillwright.model.Turn;
import org.drillwright.notation.Utterance;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A frame that no sentence uses misleads sooner or later: where it means something it is for a sentence that nobody thought of. Each
 * is used by one of the specifications, the batches, the matrices, the drills or what is said back: it is part of what that
 * sentence is taken for, or without it the sentence is read otherwise.
 */
class FramesInUseTest {

    /** A sentence of the language that it is read in. */
    private record Sentence(String tag, String text) {}

    /** So many sentences are asked for one frame that means something in them without being used. */
    private static final int ASKED = 400;

    private final AllLanguageTables tongues = new AllLanguageTables();
    private final FrameByFrame frames = new FrameByFrame(TurnReader.frameLines());
    private final Set<FrameByFrame.One> open = new LinkedHashSet<>(frames.all());
    private final Map<FrameByFrame.One, Integer> asked = new HashMap<>();

    @Tag("deep")
    @Test
    void each_frame_is_used_by_a_sentence() {
        for (Sentence sentence : sentences()) {
            if (open.isEmpty()) {
                break;
            }
            ask(sentence);
        }
        assertEquals(
                List.of(),
                open.stream().map(FrameByFrame.One::line).toList(),
                "no sentence uses these frames: write one for each, with its meaning, into src/test/resources/reading, or remove the frame");
    }

    private void ask(Sentence sentence) {
        frames.meant();
        Utterance whole = read(sentence);
        Set<FrameByFrame.One> perhaps = new LinkedHashSet<>(frames.meant());
        perhaps.retainAll(open);
        if (perhaps.isEmpty()) {
            return;
        }
        open.removeAll(frames.of(taken(sentence)));
        perhaps.retainAll(open);
        for (FrameByFrame.One one : perhaps) {
            if (asked.merge(one, 1, Integer::sum) <= ASKED) {
                frames.without(Optional.of(one));
                if (!read(sentence).equals(whole)) {
                    open.remove(one);
                }
                frames.without(Optional.empty());
            }
        }
    }

    /** What the pieces mean that a sentence is divided into. */
    private List<Meant> taken(Sentence sentence) {
        LanguageTables tongue = tongues.of(sentence.tag());
        return tongue.lexicon().sentences(sentence.text()).stream()
                .flatMap(tokens ->
                        Segmentation.of(tongue, tokens, Chart.of(tongue.lexicon(), tongue.grammar(), frames, tokens))
                                .get(0)
                                .pieces()
                                .stream())
                .flatMap(piece -> piece.meant().stream())
                .toList();
    }

    private Utterance read(Sentence sentence) {
        return TurnReader.with(tongues, frames).read(sentence.text(), sentence.tag());
    }

    private static List<Sentence> sentences() {
        Set<Sentence> all = new LinkedHashSet<>();
        for (String tag : TurnReader.standard().tags()) {
            Expectation.of(tag + ".tsv").forEach(row -> all.add(new Sentence(tag, row.sentence())));
            SayableActions.all()
                    .forEach(action -> TurnReader.standard()
                            .said(action, tag)
                            .ifPresent(said -> all.add(new Sentence(tag, said))));
        }
        for (String batch : batches()) {
            String tag = batch.matches("(fr|it|es|de)\\d\\.tsv") ? batch.substring(0, 2) : "en";
            Expectation.of("batches/" + batch).forEach(row -> all.add(new Sentence(tag, row.sentence())));
        }
        Stream.of(Corpus.exampleSchool(), Corpus.correct(), Corpus.unseen(), Corpus.handbook())
                .flatMap(corpus -> corpus.samples().stream())
                .flatMap(FramesInUseTest::texts)
                .filter(text -> !text.isBlank())
                .forEach(text -> all.add(new Sentence(TurnReader.standard().tag(text), text)));
        for (String tag : TurnReader.standard().tags()) {
            Paraphrases.of(tag)
                    .drawn(new Random(1), 20)
                    .forEach(one -> all.add(new Sentence(tag, one.expected().sentence())));
        }
        return new ArrayList<>(all);
    }

    private static Stream<String> texts(Sample sample) {
        var drill = sample.subject().drill();
        return Stream.concat(
                Stream.of(drill.start(), drill.opening(), drill.closing()),
                drill.steps().stream()
                        .flatMap(step -> Stream.of(Side.values()).flatMap(side -> step.turn(side).stream()))
                        .map(Turn::read));
    }

    private static List<String> batches() {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/reading/batches"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
