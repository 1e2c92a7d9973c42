package org.drillwright.grammar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;

/**
 * All phrases of a sentence, found from the bottom up.
 *
 * <p>Three things are built in: a phrase of a noun's category is an {@code NP}; a preposition with an NP, an NP alone and
 * an adverb are arguments; a verb ({@code V}, then {@code VP}) and a noun of an action ({@code ACTN}) take arguments and
 * mean with them what their frames say ({@code ACT}).
 */
public final class Chart<M> {

    /** Phrases of one category that are kept for one stretch, beside the senses of its words. */
    private static final int KEPT = 14;

    private static final int ARGUMENTS = 6;

    /** Of a head: that an argument of it stands behind a comma. */
    private static final String BEHIND_COMMA = "cm";

    private static final double ARGUMENT = 0.3;
    private static final double LATE = 1;
    private static final double BEFORE = 1.2;
    private static final double NOUN_STYLE = 0.5;
    private static final double SUBJECT = 0.5;

    private final Lexicon lexicon;
    private final Grammar grammar;
    private final Sense<M> sense;
    private final List<Token> sentence;
    private final List<List<Cell<M>>> cells = new ArrayList<>();
    private final List<List<Phrase<M>>> starting = new ArrayList<>();
    private final Lookahead lookahead;

    /** A construction of which the first parts have been found. */
    private record Begun<M>(
            Production rule,
            int done,
            int from,
            Features features,
            double weight,
            List<Argument<M>> arguments,
            List<M> meant) {

        Production.Child next() {
            return rule.child(done);
        }
    }

    /** What stands in one stretch. */
    private static final class Cell<M> {
        private final Map<String, List<Phrase<M>>> phrases = new HashMap<>();

        /** The numbers of the categories of which there is a phrase: most are asked for in vain. */
        private final BitSet there = new BitSet();

        private final List<Begun<M>> begun = new ArrayList<>();
        private final Deque<Phrase<M>> fresh = new ArrayDeque<>();

        boolean isEmpty() {
            return phrases.isEmpty() && begun.isEmpty();
        }

        List<Phrase<M>> of(String category) {
            return phrases.getOrDefault(category, List.of());
        }
    }

    private Chart(Lexicon lexicon, Grammar grammar, Sense<M> sense, List<Token> sentence) {
        this.lexicon = lexicon;
        this.grammar = grammar;
        this.sense = sense;
        this.sentence = sentence;
        for (int from = 0; from < sentence.size(); from++) {
            List<Cell<M>> row = new ArrayList<>();
            for (int to = from + 1; to <= sentence.size(); to++) {
                row.add(new Cell<>());
            }
            cells.add(row);
        }
        this.lookahead = new Lookahead(grammar, words());
    }

    /** Finds the phrases of a sentence; its length is bounded by who calls. */
    public static <M> Chart<M> of(Lexicon lexicon, Grammar grammar, Sense<M> sense, List<Token> sentence) {
        Chart<M> chart = new Chart<>(lexicon, grammar, sense, sentence);
        chart.fill();
        return chart;
    }

    /** All phrases that begin at a token. */
    public List<Phrase<M>> from(int token) {
        return starting.get(token);
    }

    private Cell<M> cell(int from, int to) {
        return cells.get(from).get(to - from - 1);
    }

    private void fill() {
        int length = sentence.size();
        for (int span = 1; span <= length; span++) {
            for (int from = 0; from + span <= length; from++) {
                for (int middle = from + 1; middle < from + span; middle++) {
                    join(cell(from, middle), cell(middle, from + span), cell(from, from + span), from + span);
                }
                close(cell(from, from + span), from, from + span);
            }
        }
        for (List<Cell<M>> row : cells) {
            List<Phrase<M>> all = new ArrayList<>();
            row.forEach(cell -> cell.phrases.values().forEach(all::addAll));
            starting.add(all);
        }
    }

    /** Puts the words in; for each token the categories of what begins there. */
    private List<List<String>> words() {
        List<List<String>> senses = new ArrayList<>();
        for (int at = 0; at < sentence.size(); at++) {
            List<String> here = new ArrayList<>();
            String word = sentence.get(at).folded();
            here.add(word("'" + word, at, at + 1, Features.NONE));
            if (!sentence.get(at).written().equals(word)) {
                here.add(word("'" + sentence.get(at).written(), at, at + 1, Features.NONE));
            }
            if (!sentence.get(at).isWord() || word.equals(Token.QUOTE)) {
                here.add(word(word, at, at + 1, Features.NONE));
            }
            for (Lexicon.Match match : lexicon.at(sentence, at)) {
                here.add(word(
                        match.entry().category(), at, match.end(), match.entry().features()));
            }
            senses.add(here);
        }
        return senses;
    }

    private String word(String category, int from, int to, Features features) {
        add(cell(from, to), new Phrase<>(category, from, to, features, 0, List.of(), List.of()), Integer.MAX_VALUE);
        return category;
    }

    /** Keeps a phrase unless it is known already at no greater cost, or there are enough that cost less. */
    private void add(Cell<M> cell, Phrase<M> phrase) {
        add(cell, phrase, KEPT);
    }

    private void add(Cell<M> cell, Phrase<M> phrase, int most) {
        List<Phrase<M>> kept = cell.phrases.get(phrase.category());
        if (kept == null) {
            kept = new ArrayList<>();
            cell.phrases.put(phrase.category(), kept);
            grammar.number(phrase.category()).ifPresent(cell.there::set);
        }
        for (int at = 0; at < kept.size(); at++) {
            if (kept.get(at).saysTheSame(phrase)) {
                if (kept.get(at).weight() <= phrase.weight()) {
                    return;
                }
                kept.remove(at);
                break;
            }
        }
        kept.add(phrase);
        if (kept.size() > most) {
            kept.sort(Comparator.comparingDouble(Phrase::weight));
            if (kept.remove(kept.size() - 1).equals(phrase)) {
                return;
            }
        }
        cell.fresh.add(phrase);
    }

    // ---- one phrase by itself

    private void close(Cell<M> cell, int from, int to) {
        while (!cell.fresh.isEmpty()) {
            Phrase<M> phrase = cell.fresh.poll();
            for (Production rule : lookahead.beginningWith(phrase, to)) {
                begin(cell, rule, phrase);
            }
            buildIn(cell, phrase, from, to);
        }
    }

    private void begin(Cell<M> cell, Production rule, Phrase<M> phrase) {
        Production.Child child = rule.child(0);
        if (!child.condition().holds(phrase.features())) {
            return;
        }
        Begun<M> nothing = new Begun<>(rule, 0, phrase.from(), Features.NONE, rule.weight(), List.of(), List.of());
        Begun<M> begun = with(nothing, child, phrase, phrase.features());
        step(cell, begun, phrase.to());
    }

    private void step(Cell<M> cell, Begun<M> begun, int to) {
        if (begun.done() < begun.rule().size()) {
            if (lookahead.mayGoOn(begun.rule(), begun.done(), to)) {
                cell.begun.add(begun);
            }
            return;
        }
        Features said = begun.rule().result();
        Features result = begun.features().renamedBy(said);
        Optional<String> concept = said.get("means");
        if (concept.isPresent()) {
            Features head = result.without("means").with("c", concept.get());
            for (Sense.Sensed<M> sensed : sense.of(head, List.of())) {
                add(
                        cell,
                        finished(begun, to, result.without("means"), begun.weight() + sensed.weight(), sensed.meant()));
            }
            return;
        }
        List<M> meant = said.get("acts").map(sense::named).orElse(begun.meant());
        boolean trifle = meant.isEmpty() || said.has("acts");
        add(cell, finished(begun, to, trifle ? result : result.without("acts"), begun.weight(), meant));
    }

    private Phrase<M> finished(Begun<M> begun, int to, Features features, double weight, List<M> meant) {
        return new Phrase<>(
                begun.rule().parent(), begun.from(), to, features, weight, begun.arguments(), told(features, meant));
    }

    private List<M> told(Features features, List<M> meant) {
        return features.is("form", "having") ? sense.had(meant) : meant;
    }

    private void buildIn(Cell<M> cell, Phrase<M> phrase, int from, int to) {
        String category = phrase.category();
        Features features = phrase.features();
        double weight = phrase.weight();
        if (grammar.isNoun(category)) {
            add(cell, new Phrase<>("NP", from, to, sorted(features, category), weight, List.of(), phrase.meant()));
        }
        switch (category) {
            case "NP" -> add(cell, argument(phrase, "obj", weight));
            case "ADV" -> add(cell, argument(phrase, "adv", weight));
            case "V" -> add(cell, new Phrase<>("VP", from, to, features, weight, List.of(), List.of()));
            case "ACTN" -> {
                Features noun = features.with("form", "n");
                add(cell, new Phrase<>("VP", from, to, noun, weight + NOUN_STYLE, List.of(), List.of()));
            }
            case "VP" -> mean(cell, phrase);
            case "ACT" -> {
                if (features.is("form", "ing")) {
                    Features gerund = sorted(features, "GER");
                    add(cell, new Phrase<>("NP", from, to, gerund, weight, List.of(), phrase.meant()));
                }
            }
            default -> {}
        }
    }

    private static Features sorted(Features features, String sort) {
        return features.with("s", sort);
    }

    private Phrase<M> argument(Phrase<M> phrase, String relation, double weight) {
        String sort = phrase.features().get("s").orElse(phrase.category());
        Argument<M> argument = new Argument<>(relation, sort, phrase.features().without("s"), phrase.meant());
        return new Phrase<>("ARG", phrase.from(), phrase.to(), Features.NONE, weight, List.of(argument), List.of());
    }

    /** A head with its arguments, as what it means. */
    private void mean(Cell<M> cell, Phrase<M> head) {
        Features kept = head.features().get("form").isPresent()
                ? Features.NONE.with("form", head.features().get("form").orElseThrow())
                : Features.NONE;
        Features named =
                head.features().get("c").map(concept -> kept.with("c", concept)).orElse(kept);
        boolean anothers = head.features().is("form", "n") && head.features().is("who", "other");
        Features whose = anothers ? named.with("who", "other") : named;
        boolean definite = head.features().is("form", "n") && head.features().has("dt");
        Features known = definite ? whose.with("dt", Features.PRESENT) : whose;
        Features about = head.features().has(BEHIND_COMMA) ? known.with(BEHIND_COMMA, Features.PRESENT) : known;
        for (Sense.Sensed<M> sensed : sense.of(head.features(), head.arguments())) {
            boolean subject = head.arguments().stream()
                    .anyMatch(argument -> argument.relation().equals("subj"));
            Features features = sensed.meant().isEmpty() ? about.with("acts", sensed.trifle()) : about;
            add(
                    cell,
                    new Phrase<>(
                            subject ? "S" : "ACT",
                            head.from(),
                            head.to(),
                            subject ? features.with("th", Features.PRESENT) : features,
                            head.weight() + sensed.weight(),
                            List.of(),
                            told(features, sensed.meant())));
        }
    }

    // ---- two phrases beside each other

    private void join(Cell<M> left, Cell<M> right, Cell<M> whole, int to) {
        if (right.phrases.isEmpty() || left.isEmpty()) {
            return;
        }
        for (Begun<M> begun : left.begun) {
            Production.Child next = begun.next();
            if (right.there.get(next.number())) {
                for (Phrase<M> phrase : right.of(next.category())) {
                    advance(whole, begun, phrase, to);
                }
            }
        }
        for (String category : grammar.heads()) {
            for (Phrase<M> head : left.of(category)) {
                for (Phrase<M> argument : right.of("ARG")) {
                    take(whole, head, argument, ARGUMENT);
                }
            }
            for (Phrase<M> argument : left.of("ARG")) {
                for (Phrase<M> head : right.of(category)) {
                    takeBefore(whole, argument, head);
                }
            }
        }
        for (Phrase<M> preposition : left.of("P")) {
            String relation = preposition.features().get("r").orElse("");
            for (Phrase<M> noun : right.of("NP")) {
                add(whole, spread(argument(noun, relation, noun.weight() + preposition.weight()), preposition.from()));
            }
        }
        for (Phrase<M> comma : left.of(",")) {
            for (Phrase<M> argument : right.of("ARG")) {
                late(whole, comma, argument);
            }
        }
    }

    private void advance(Cell<M> whole, Begun<M> begun, Phrase<M> phrase, int to) {
        Production.Child child = begun.next();
        if (!child.condition().holds(phrase.features())) {
            return;
        }
        Optional<Features> both = child.up() == Production.Up.ALL
                ? begun.features().and(phrase.features())
                : Optional.of(begun.features());
        both.ifPresent(features -> step(whole, with(begun, child, phrase, features), to));
    }

    private Begun<M> with(Begun<M> begun, Production.Child child, Phrase<M> phrase, Features features) {
        List<Argument<M>> arguments = switch (child.up()) {
            case ALL -> joined(begun.arguments(), phrase.arguments());
            case ARGUMENT ->
                joined(begun.arguments(), argument(phrase, child.relation(), 0).arguments());
            case MEANING, NOTHING -> begun.arguments();
        };
        boolean means = child.up() == Production.Up.ALL || child.up() == Production.Up.MEANING;
        return new Begun<>(
                begun.rule(),
                begun.done() + 1,
                begun.from(),
                child.up() == Production.Up.ALL ? features : begun.features(),
                begun.weight() + phrase.weight(),
                arguments,
                means ? joined(begun.meant(), phrase.meant()) : begun.meant());
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        if (first.isEmpty() || second.isEmpty()) {
            return first.isEmpty() ? second : first;
        }
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    private void take(Cell<M> whole, Phrase<M> head, Phrase<M> argument, double cost) {
        if (head.arguments().size() >= ARGUMENTS) {
            return;
        }
        Argument<M> taken = argument.arguments().get(0);
        List<Argument<M>> arguments = joined(head.arguments(), List.of(taken));
        if (sense.mayTake(head.features(), arguments)) {
            add(
                    whole,
                    new Phrase<>(
                            head.category(),
                            Math.min(head.from(), argument.from()),
                            Math.max(head.to(), argument.to()),
                            argument.features().isEmpty()
                                    ? head.features()
                                    : head.features().with(BEHIND_COMMA, Features.PRESENT),
                            head.weight() + argument.weight() + cost,
                            arguments,
                            List.of()));
        }
    }

    /**
     * A head takes what stands before it only behind 'with', 'from', 'by' and 'in', unless its form comes last in the language; a
     * noun there may be its subject.
     */
    private void takeBefore(Cell<M> whole, Phrase<M> argument, Phrase<M> head) {
        Argument<M> taken = argument.arguments().get(0);
        if (head.features().get("form").filter(grammar::mayComeLast).isPresent()) {
            take(whole, head, argument, ARGUMENT);
            return;
        }
        switch (taken.relation()) {
            case "with", "from", "by", "in" -> take(whole, head, argument, BEFORE);
            case "obj" -> {
                boolean finite =
                        head.features().is("form", "3") || head.features().is("form", "base");
                if (finite) {
                    Argument<M> subject = new Argument<>("subj", taken.sort(), taken.features(), taken.meant());
                    Phrase<M> before = new Phrase<>(
                            "ARG",
                            argument.from(),
                            argument.to(),
                            Features.NONE,
                            argument.weight(),
                            List.of(subject),
                            List.of());
                    take(whole, head, before, SUBJECT);
                }
            }
            default -> {}
        }
    }

    private void late(Cell<M> whole, Phrase<M> comma, Phrase<M> argument) {
        Argument<M> taken = argument.arguments().get(0);
        boolean bare = taken.relation().equals("obj") || taken.relation().equals("adv");
        if (!taken.relation().equals("subj") && (!bare || grammar.mayComeLate(taken.sort()))) {
            add(
                    whole,
                    spread(
                            new Phrase<>(
                                    "ARG",
                                    argument.from(),
                                    argument.to(),
                                    Features.NONE.with(BEHIND_COMMA, Features.PRESENT),
                                    argument.weight() + LATE,
                                    argument.arguments(),
                                    List.of()),
                            comma.from()));
        }
    }

    private Phrase<M> spread(Phrase<M> phrase, int from) {
        return new Phrase<>(
                phrase.category(),
                from,
                phrase.to(),
                phrase.features(),
                phrase.weight(),
                phrase.arguments(),
                phrase.meant());
    }
}
