package org.drillwright.meaning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.grammar.Argument;
import org.drillwright.lexicon.Condition;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.TableLines;

/**
 * What a concept means with certain arguments: {@code CONCEPT[condition] : relation:SORT[condition]? … => actions @weight}.
 *
 * @param heads the concepts it is for, each with what is asked of it
 * @param roles its arguments, those it needs first: an argument goes to the first that it fits
 * @param template what it means
 * @param weight what it costs beside other frames
 * @param line as it is written
 */
record SemanticFrame(
        Map<String, List<Condition>> heads, List<Role> roles, ActionTemplate template, double weight, String line) {

    /** The relations that {@code ~} stands for: those that differ by usage only. */
    private static final Set<String> ANY = Set.of("obj", "to", "in", "at", "on", "along", "against", "for", "adv");

    /**
     * An argument that a frame takes.
     *
     * @param relations how it may hang on the head
     * @param sorts what it may be, each with what is asked of it
     * @param needed whether the frame needs it
     * @param lookedAt whether it says nothing that the actions have to say
     */
    record Role(Set<String> relations, Map<String, List<Condition>> sorts, boolean needed, boolean lookedAt) {

        Role {
            relations = Set.copyOf(relations);
            sorts = Map.copyOf(sorts);
        }

        /** What is asked of an argument that fits here; empty if it does not. */
        Optional<Condition> fits(Argument<Meant> argument) {
            if (!relations.contains(argument.relation())) {
                return Optional.empty();
            }
            for (Condition condition : sorts.getOrDefault(argument.sort(), List.of())) {
                if (condition.holds(argument.features())) {
                    return Optional.of(condition);
                }
            }
            return Optional.empty();
        }
    }

    SemanticFrame {
        heads = new LinkedHashMap<>(heads);
        roles = Stream.concat(
                        roles.stream().filter(Role::needed), roles.stream().filter(role -> !role.needed()))
                .toList();
    }

    /** The concepts that a line is for, without taking the rest of it apart. */
    static Set<String> concepts(String line) {
        String heads = line.substring(0, headsEnd(line)).strip();
        Set<String> concepts = new LinkedHashSet<>();
        for (String head : alternatives(heads)) {
            int bracket = head.indexOf('[');
            concepts.add(bracket < 0 ? head : head.substring(0, bracket));
        }
        return concepts;
    }

    private static int headsEnd(String line) {
        int colon = line.indexOf(" : ");
        if (colon < 0 || line.indexOf("=>") < colon) {
            throw new IllegalArgumentException("no frame: " + line);
        }
        return colon;
    }

    static SemanticFrame parse(String line) {
        int colon = headsEnd(line);
        int arrow = line.indexOf("=>");
        List<Role> roles = new ArrayList<>();
        String between = line.substring(colon + 3, arrow).strip();
        for (String word : TableLines.words(between)) {
            roles.add(role(word));
        }
        String means = line.substring(arrow + 2).strip();
        double weight = 0;
        int at = means.lastIndexOf('@');
        if (at >= 0) {
            weight = Double.parseDouble(means.substring(at + 1));
            means = means.substring(0, at).strip();
        }
        return new SemanticFrame(
                conditioned(line.substring(0, colon).strip()),
                roles,
                ActionTemplate.parse(means),
                weight,
                line.strip());
    }

    private static Role role(String word) {
        boolean needed = true;
        boolean lookedAt = false;
        String rest = word;
        while (rest.endsWith("?") || rest.endsWith("!")) {
            needed = needed && !rest.endsWith("?");
            lookedAt = lookedAt || rest.endsWith("!");
            rest = rest.substring(0, rest.length() - 1);
        }
        int colon = rest.indexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException("no role: " + word);
        }
        Set<String> relations = new TreeSet<>();
        for (String relation : rest.substring(0, colon).split("\\|")) {
            relations.addAll(relation.equals("~") ? ANY : Set.of(relation));
        }
        return new Role(relations, conditioned(rest.substring(colon + 1)), needed, lookedAt);
    }

    /** Parts {@code A[x|z]|B} at the bars that stand in no brackets. */
    private static List<String> alternatives(String text) {
        List<String> parts = new ArrayList<>(2);
        int begin = 0;
        boolean within = false;
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            within = sign == '[' || (within && sign != ']');
            if (sign == '|' && !within) {
                parts.add(text.substring(begin, at));
                begin = at + 1;
            }
        }
        parts.add(text.substring(begin));
        return parts;
    }

    /** Reads {@code A[x]|B|A[y]}. */
    private static Map<String, List<Condition>> conditioned(String text) {
        Map<String, List<Condition>> all = new LinkedHashMap<>();
        for (String one : alternatives(text)) {
            int bracket = one.indexOf('[');
            String name = bracket < 0 ? one : one.substring(0, bracket);
            Condition condition =
                    bracket < 0 ? Condition.NONE : Condition.parse(one.substring(bracket + 1, one.length() - 1));
            all.computeIfAbsent(name, key -> new ArrayList<>()).add(condition);
        }
        return all;
    }

    /**
     * Whether the head with these arguments could become this frame, perhaps with more arguments.
     *
     * @param heads what is asked of a head of its concept, any of which will do
     */
    boolean mayTake(List<Condition> heads, Features head, List<Argument<Meant>> arguments) {
        return arguments.size() <= roles.size()
                && asked(heads, head).isPresent()
                && assigned(arguments, 0, new int[arguments.size()]);
    }

    /** What is asked of the head, if it fits. */
    private static Optional<Condition> asked(List<Condition> heads, Features head) {
        for (int at = 0; at < heads.size(); at++) {
            if (heads.get(at).holds(head)) {
                return Optional.of(heads.get(at));
            }
        }
        return Optional.empty();
    }

    private boolean assigned(List<Argument<Meant>> arguments, int at, int[] to) {
        if (at == arguments.size()) {
            return true;
        }
        for (int role = 0; role < roles.size(); role++) {
            if (!isTaken(role, to, at)
                    && roles.get(role).fits(arguments.get(at)).isPresent()) {
                to[at] = role;
                if (assigned(arguments, at + 1, to)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether so many arguments leave one out that it needs; those stand first. */
    private boolean needsMoreThan(int arguments) {
        return arguments < roles.size() && roles.get(arguments).needed();
    }

    private static boolean isTaken(int role, int[] to, int before) {
        for (int at = 0; at < before; at++) {
            if (to[at] == role) {
                return true;
            }
        }
        return false;
    }

    /**
     * What the head means with just these arguments; empty if they do not fit, or if one of them says something that
     * would be lost.
     *
     * @param heads what is asked of a head of this concept, any of which will do
     * @param loose features that say nothing of what is done
     */
    Optional<Filled> fill(
            String concept, List<Condition> heads, Features head, List<Argument<Meant>> arguments, Set<String> loose) {
        if (arguments.size() > roles.size() || needsMoreThan(arguments.size())) {
            return Optional.empty();
        }
        Optional<Condition> asked = asked(heads, head);
        int[] to = new int[arguments.size()];
        if (asked.isEmpty() || !assigned(arguments, 0, to) || !allThere(to)) {
            return Optional.empty();
        }
        Features all = head;
        if (!says(head, asked.get(), loose)) {
            return Optional.empty();
        }
        List<Meant> meant = new ArrayList<>();
        for (int at = 0; at < to.length; at++) {
            Argument<Meant> argument = arguments.get(at);
            meant.addAll(argument.meant());
            Role role = roles.get(to[at]);
            if (role.lookedAt() || argument.sort().equals("GER")) {
                continue;
            }
            if (!says(argument.features(), role.fits(argument).orElseThrow(), loose)) {
                return Optional.empty();
            }
            Optional<Features> both = all.and(argument.features().without("c"));
            if (both.isEmpty()) {
                return Optional.empty();
            }
            all = both.get();
        }
        Features complete = all;
        return template.filled(complete, concept).map(texts -> new Filled(texts, meant));
    }

    /** Whether all that is taken in is said by the actions or asked for. */
    private boolean says(Features taken, Condition asked, Set<String> loose) {
        for (String name : taken.names()) {
            if (!name.equals("c") && !template.uses().contains(name) && !loose.contains(name) && !asked.asks(name)) {
                return false;
            }
        }
        return true;
    }

    /**
     * A frame with its blanks filled.
     *
     * @param texts actions in their short form, or {@code &}
     * @param carried what its arguments mean by themselves
     */
    record Filled(List<String> texts, List<Meant> carried) {}

    private boolean allThere(int[] to) {
        for (int role = 0; role < roles.size(); role++) {
            if (roles.get(role).needed() && !isTaken(role, to, to.length)) {
                return false;
            }
        }
        return true;
    }
}
