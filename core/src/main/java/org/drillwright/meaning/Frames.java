package org.drillwright.meaning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.grammar.Argument;
import org.drillwright.grammar.Sense;
import org.drillwright.lexicon.Condition;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.TableLines;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;

/**
 * All frames: what concepts mean with their arguments, one table for all languages. Beside frames its file names the
 * features that say nothing of what is done ({@code loose …}) and what constructions mean by themselves
 * ({@code named NAME => actions}).
 */
public final class Frames implements Sense<Meant> {

    /** The hand or the blade goes somewhere: nothing to play, but nobody knows where it is then. */
    private static final String MOVED = "aside moved";

    private final List<Written> all = new ArrayList<>();
    private final Map<String, List<Written>> byConcept = new HashMap<>();
    private final Map<String, List<Headed>> headed = new ConcurrentHashMap<>();
    private final Map<String, String> named = new LinkedHashMap<>();
    private final Map<String, List<Meant>> meantBy = new ConcurrentHashMap<>();
    private final Set<String> loose = new HashSet<>();
    private final Map<String, List<Meant>> known = new ConcurrentHashMap<>();

    /** A frame that is taken apart when one of its concepts is first asked for: a drill needs few of them. */
    private static final class Written {
        private final String line;
        private Optional<SemanticFrame> frame = Optional.empty();

        private Written(String line) {
            this.line = line;
        }

        synchronized SemanticFrame frame() {
            if (frame.isEmpty()) {
                frame = Optional.of(SemanticFrame.parse(line));
            }
            return frame.get();
        }
    }

    /**
     * A frame of a concept, with what it asks of this head.
     *
     * @param relations the bits of all relations that it takes, so that most that take others need not be looked at
     * @param sorts the same of what may stand in them
     */
    private record Headed(SemanticFrame frame, List<Condition> asked, long relations, long sorts) {

        static Headed of(SemanticFrame frame, List<Condition> asked) {
            long relations = 0;
            long sorts = 0;
            for (SemanticFrame.Role role : frame.roles()) {
                for (String relation : role.relations()) {
                    relations |= Features.bit(relation);
                }
                for (String sort : role.sorts().keySet()) {
                    sorts |= Features.bit(sort);
                }
            }
            return new Headed(frame, List.copyOf(asked), relations, sorts);
        }

        /** False only if an argument of these bits is none that it takes. */
        boolean mayTake(long ofRelations, long ofSorts) {
            return (ofRelations & ~relations) == 0 && (ofSorts & ~sorts) == 0;
        }
    }

    private Frames() {}

    /**
     * Builds the table.
     *
     * @throws IllegalArgumentException if a line cannot be used, with the line
     */
    public static Frames read(List<String> lines) {
        Frames frames = trusted(lines);
        frames.all.forEach(Written::frame);
        frames.named.keySet().forEach(frames::named);
        return frames;
    }

    /** The same of lines that are known to be sound, as those that come with the program are: each is read when it is needed. */
    public static Frames trusted(List<String> lines) {
        Frames frames = new Frames();
        for (String text : TableLines.of(lines)) {
            if (text.startsWith("loose ")) {
                frames.loose.addAll(TableLines.words(text.substring(6)));
            } else if (text.startsWith("named ")) {
                int arrow = text.indexOf("=>");
                frames.named.put(text.substring(6, arrow).strip(), text.substring(arrow + 2));
            } else {
                frames.add(new Written(text));
            }
        }
        return frames;
    }

    private void add(Written frame) {
        all.add(frame);
        for (String concept : SemanticFrame.concepts(frame.line)) {
            byConcept.computeIfAbsent(concept, key -> new ArrayList<>(2)).add(frame);
        }
    }

    private List<Headed> of(String concept) {
        return byConcept.containsKey(concept) ? headed.computeIfAbsent(concept, this::headed) : List.of();
    }

    private List<Headed> headed(String concept) {
        List<Headed> found = new ArrayList<>();
        for (Written written : byConcept.getOrDefault(concept, List.of())) {
            SemanticFrame frame = written.frame();
            found.add(Headed.of(frame, frame.heads().getOrDefault(concept, List.of())));
        }
        return List.copyOf(found);
    }

    /** Each frame as it is written. */
    public List<String> lines() {
        return all.stream().map(written -> written.line.strip()).toList();
    }

    /** The concepts that have a frame. */
    public Set<String> concepts() {
        return Set.copyOf(byConcept.keySet());
    }

    @Override
    public boolean mayTake(Features head, List<Argument<Meant>> arguments) {
        String concept = head.get("c").orElse("");
        long relations = relations(arguments);
        long sorts = sorts(arguments);
        for (Headed headed : of(concept)) {
            if (headed.mayTake(relations, sorts) && headed.frame().mayTake(headed.asked(), head, arguments)) {
                return true;
            }
        }
        return false;
    }

    private static long relations(List<Argument<Meant>> arguments) {
        long bits = 0;
        for (int at = 0; at < arguments.size(); at++) {
            bits |= Features.bit(arguments.get(at).relation());
        }
        return bits;
    }

    private static long sorts(List<Argument<Meant>> arguments) {
        long bits = 0;
        for (int at = 0; at < arguments.size(); at++) {
            bits |= Features.bit(arguments.get(at).sort());
        }
        return bits;
    }

    @Override
    public List<Sensed<Meant>> of(Features head, List<Argument<Meant>> arguments) {
        String concept = head.get("c").orElse("");
        long relations = relations(arguments);
        long sorts = sorts(arguments);
        List<Sensed<Meant>> found = new ArrayList<>();
        for (Headed headed : of(concept)) {
            Optional<SemanticFrame.Filled> filled = headed.mayTake(relations, sorts)
                    ? headed.frame().fill(concept, headed.asked(), head, arguments, loose)
                    : Optional.empty();
            if (filled.isPresent()) {
                found.add(sensed(filled.get(), headed.frame().weight()));
            }
        }
        found.sort((one, other) -> Double.compare(one.weight(), other.weight()));
        return found.subList(0, Math.min(1, found.size()));
    }

    private Sensed<Meant> sensed(SemanticFrame.Filled filled, double weight) {
        List<Meant> meant = meant(filled);
        return meant.isEmpty() && filled.texts().contains(MOVED)
                ? new Sensed<>(meant, weight, "moved")
                : new Sensed<>(meant, weight);
    }

    private List<Meant> meant(SemanticFrame.Filled filled) {
        List<Meant> meant = new ArrayList<>();
        for (String text : filled.texts()) {
            switch (text) {
                case "&" -> meant.addAll(filled.carried());
                case "&parry" -> filled.carried().forEach(one -> meant.add(asParry(one)));
                case "aside", MOVED -> {}
                default -> meant.addAll(known.computeIfAbsent(text, ActionText::read));
            }
        }
        return meant;
    }

    /** To carry the hand somewhere against a blade is to parry there. */
    private static Meant asParry(Meant meant) {
        if (meant instanceof Meant.Does does && does.action() instanceof Action.Place place) {
            Action parry = new Action.Parry(
                    Optional.of(place.position()), Action.ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge());
            return new Meant.Does(parry);
        }
        return meant;
    }

    @Override
    public List<Meant> named(String name) {
        String actions = named.get(name);
        if (actions == null) {
            throw new IllegalArgumentException("nothing is named '" + name + "'");
        }
        return meantBy.computeIfAbsent(name, key -> meant(actions));
    }

    private static List<Meant> meant(String actions) {
        List<Meant> meant = new ArrayList<>();
        for (String action : actions.split(";")) {
            if (!action.isBlank()) {
                meant.addAll(ActionText.read(action));
            }
        }
        return meant;
    }

    @Override
    public List<Meant> had(List<Meant> meant) {
        return meant.stream()
                .map(one -> one instanceof Meant.Had ? one : new Meant.Had(one))
                .toList();
    }

    /** The names that constructions may use. */
    public Set<String> names() {
        return Set.copyOf(named.keySet());
    }
}
