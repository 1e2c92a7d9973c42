package org.drillwright.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.grammar.Argument;
import org.drillwright.grammar.Sense;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.TableLines;
import org.drillwright.meaning.Frames;
import org.drillwright.meaning.Meant;

/** The program's frames, each by itself: it is told which of them mean something in what is read, and one may be taken out. */
final class FrameByFrame implements Sense<Meant> {

    /** @param line as it is written */
    record One(String line, Frames frame) {}

    private final Frames named;
    private final List<One> all = new ArrayList<>();
    private final Map<String, List<One>> byConcept = new HashMap<>();
    private final Set<One> meaning = new HashSet<>();

    /** Equal meanings of two frames are two. */
    private final IdentityHashMap<Meant, One> meanings = new IdentityHashMap<>();

    private Optional<One> out = Optional.empty();

    FrameByFrame(List<String> lines) {
        List<String> told = TableLines.of(lines);
        List<String> beside = told.stream()
                .filter(line -> line.startsWith("loose ") || line.startsWith("named "))
                .toList();
        List<String> loose =
                beside.stream().filter(line -> line.startsWith("loose ")).toList();
        named = Frames.read(beside);
        for (String line : told) {
            if (!beside.contains(line)) {
                One one = new One(
                        line,
                        Frames.read(
                                Stream.concat(loose.stream(), Stream.of(line)).toList()));
                all.add(one);
                one.frame()
                        .concepts()
                        .forEach(concept -> byConcept
                                .computeIfAbsent(concept, key -> new ArrayList<>())
                                .add(one));
            }
        }
    }

    List<One> all() {
        return all;
    }

    /** Those that meant something since this was asked last, be it in a phrase that was not taken. */
    Set<One> meant() {
        Set<One> since = Set.copyOf(meaning);
        meaning.clear();
        return since;
    }

    /** Those that meant just these. */
    List<One> of(List<Meant> meant) {
        return meant.stream()
                .map(one -> one instanceof Meant.Had had ? had.meant() : one)
                .map(meanings::get)
                .filter(Objects::nonNull)
                .toList();
    }

    void without(Optional<One> one) {
        out = one;
    }

    private Stream<One> of(Features head) {
        return byConcept.getOrDefault(head.get("c").orElse(""), List.of()).stream()
                .filter(one -> !out.equals(Optional.of(one)));
    }

    @Override
    public boolean mayTake(Features head, List<Argument<Meant>> arguments) {
        return of(head).anyMatch(one -> one.frame().mayTake(head, arguments));
    }

    @Override
    public List<Sensed<Meant>> of(Features head, List<Argument<Meant>> arguments) {
        List<Sensed<Meant>> best = List.of();
        Optional<One> told = Optional.empty();
        for (One one : of(head).toList()) {
            List<Sensed<Meant>> sensed = one.frame().of(head, arguments);
            if (!sensed.isEmpty()
                    && (best.isEmpty() || sensed.get(0).weight() < best.get(0).weight())) {
                best = sensed;
                told = Optional.of(one);
            }
        }
        for (One one : told.stream().toList()) {
            meaning.add(one);
            best.forEach(sensed -> sensed.meant().forEach(meant -> meanings.putIfAbsent(meant, one)));
        }
        return best;
    }

    @Override
    public List<Meant> named(String name) {
        return named.named(name);
    }

    @Override
    public List<Meant> had(List<Meant> meant) {
        return named.had(meant);
    }
}
