package org.drillwright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.grammar.Chart;
import org.drillwright.grammar.Phrase;
import org.drillwright.lexicon.Features;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.notation.Action;

/**
 * The cheapest divisions of a sentence into phrases and gaps, found from left to right. There is no construction for a
 * whole sentence: that something is left over is the normal case.
 */
final class Segmentation {

    /** Divisions kept for each place. */
    private static final int KEPT = 8;

    private static final double CLAUSE = 1;
    private static final double ABOUT = 0.6;
    private static final double MANNER = 0.9;
    private static final double FRAGMENT = 1.6;
    private static final double THIRD_PERSON = 3;
    private static final double CHOICE = 2;

    /** What another does is about another however it is put: dearer than any reading of all its words. */
    private static final double ELSEWHERE = 4;

    /** A known word is dearer to pass over, so that the gap falls on the stranger. */
    private static final double LISTED = 10;

    private static final double UNLISTED = 8;
    /** An order behind what somebody named does. */
    private static final double GOES_ON = 0.5;

    /** The same, where the very words say that he does: 'il riposte et touche à la poitrine'. */
    private static final double TOLD_ON = 2;

    /** A verb in the third person there, where it may as well be a noun. */
    private static final double STILL_TOLD = -0.2;

    /** A verb behind a comma after what the partner does, which may as well be an order: 'il attaque, pare quarte'. */
    private static final double TURNED_AWAY = 0.3;

    /** Phrases before which a thought may end that stands by itself: 'masks on before anybody lifts a foil'. */
    private static final Set<String> ENDING = Set.of("SEP", "SEPOR", "ELSE");

    /** An order directly behind what another does, without a sign: 'she loves that stop hit' is no order. */
    private static final double TALE_BEFORE = 2;

    private static final double CROWDED = 4;
    private static final double CROWDED_TRIFLE = 12;

    /** Dearer than to pass over a word: 'back off one step' is not to back off one and then to step. */
    private static final double CROWDED_PHRASE = 20;

    private final LanguageTables tongue;
    private final List<Token> sentence;
    private final Chart<Meant> chart;
    private final Elsewhere elsewhere;
    private final List<List<Division>> best = new ArrayList<>();

    /**
     * A sentence divided up to some place.
     *
     * @param cost the less, the more likely it is meant
     * @param meant what is done in it
     * @param gaps the tokens that are passed over
     */
    record Division(List<SentencePart> pieces, double cost, List<Meant> meant, List<Integer> gaps) {

        static final Division NOTHING = new Division(List.of(), 0, List.of(), List.of());

        Division {
            pieces = List.copyOf(pieces);
            meant = List.copyOf(meant);
            gaps = List.copyOf(gaps);
        }

        Optional<SentencePart> last() {
            return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(pieces.size() - 1));
        }

        /** What was done last without a sign or an 'and' since: 'parry to stop the head cut'. */
        Optional<SentencePart> lastDone() {
            for (int at = pieces.size() - 1; at >= 0; at--) {
                SentencePart piece = pieces.get(at);
                boolean denied = piece.features().has("deny");
                boolean beside = piece.kind() == SentencePart.Kind.ABOUT || piece.kind() == SentencePart.Kind.MANNER;
                if (denied || !beside) {
                    boolean done = denied
                            || piece.kind() == SentencePart.Kind.CLAUSE
                            || piece.kind() == SentencePart.Kind.FRAGMENT;
                    return done && !piece.isCallTo() ? Optional.of(piece) : Optional.empty();
                }
            }
            return Optional.empty();
        }

        /** Whether a new thought may begin here. */
        boolean isOpen() {
            return last().map(piece -> piece.parts() || piece.kind() == SentencePart.Kind.COUNT || piece.isCallTo())
                    .orElse(true);
        }

        /** Whether all that was told since a sign is about something else: 'upon the command the masks are put on'. */
        boolean isBeside() {
            return last().filter(piece -> piece.isForm("having")).isPresent() || isToldOfElse();
        }

        private boolean isToldOfElse() {
            return last().filter(piece -> piece.kind() == SentencePart.Kind.ABOUT
                                    && !piece.features().has("deny"))
                            .isPresent()
                    && lastDone().isEmpty();
        }

        /** Whether only words that were not read stand behind what is forbidden: 'do not advance more than one step'. */
        boolean maySayWhatIsForbidden() {
            int at = pieces.size() - 1;
            while (at >= 0 && pieces.get(at).kind() == SentencePart.Kind.GAP) {
                at--;
            }
            return at >= 0
                    && at < pieces.size() - 1
                    && pieces.get(at).features().has("deny");
        }

        boolean nothingDone() {
            return pieces.stream().noneMatch(SentencePart::acts);
        }

        /** Whether somebody was just named who may go on: 'the leader beats and …'. */
        boolean tells() {
            int end = pieces.size() - 1;
            return end > 0
                    && pieces.get(end).kind() == SentencePart.Kind.AND
                    && pieces.get(end - 1).who().isPresent();
        }

        /** Whether the partner's doing was told just before a comma or colon. */
        boolean turnsAway() {
            int end = pieces.size() - 1;
            return end > 0
                    && (pieces.get(end).kind() == SentencePart.Kind.COMMA
                            || pieces.get(end).kind() == SentencePart.Kind.COLON)
                    && pieces.get(end - 1).isOfAnother();
        }

        /** Whether what somebody does was told up to a sign or an 'and': 'he retreats, parries, the hand low, and …'. */
        boolean goesOn() {
            int end = pieces.size() - 1;
            if (end <= 0 || !pieces.get(end).parts()) {
                return false;
            }
            while (end > 0 && (pieces.get(end).parts() || pieces.get(end).isHow())) {
                end--;
            }
            return pieces.get(end).who().isPresent() || pieces.get(end).isForm("3");
        }

        private Division with(SentencePart piece, double more) {
            boolean gap = piece.kind() == SentencePart.Kind.GAP;
            return new Division(
                    joined(pieces, List.of(piece)),
                    cost + more,
                    piece.acts() ? joined(meant, piece.meant()) : meant,
                    gap ? joined(gaps, List.of(piece.from())) : gaps);
        }

        private static <T> List<T> joined(List<T> before, List<T> more) {
            if (more.isEmpty()) {
                return before;
            }
            List<T> all = new ArrayList<>(before);
            all.addAll(more);
            return all;
        }

        /** Whether what is told last is told of somebody, who may go on. */
        private boolean isTold() {
            return goesOn() || last().map(piece -> piece.isForm("3")).orElse(false);
        }

        private boolean meansTheSame(Division other) {
            return gaps.equals(other.gaps)
                    && isOpen() == other.isOpen()
                    && last().map(SentencePart::acts).equals(other.last().map(SentencePart::acts))
                    && meant.equals(other.meant)
                    && isTold() == other.isTold();
        }
    }

    private Segmentation(LanguageTables tongue, List<Token> sentence, Chart<Meant> chart) {
        this.tongue = tongue;
        this.sentence = sentence;
        this.chart = chart;
        this.elsewhere = new Elsewhere(tongue, sentence, chart);
    }

    /** The divisions of a sentence, the cheapest first; at least one. */
    static List<Division> of(LanguageTables tongue, List<Token> sentence, Chart<Meant> chart) {
        return new Segmentation(tongue, sentence, chart).divide();
    }

    private List<Division> divide() {
        int length = sentence.size();
        for (int at = 0; at <= length; at++) {
            best.add(new ArrayList<>());
        }
        best.get(0).add(Division.NOTHING);
        for (int at = 0; at < length; at++) {
            List<Phrase<Meant>> phrases = chart.from(at);
            for (Division before : List.copyOf(best.get(at))) {
                extend(before, at, phrases);
            }
        }
        return best.get(length);
    }

    private void extend(Division before, int at, List<Phrase<Meant>> phrases) {
        Token token = sentence.get(at);
        if (!token.isWord()) {
            SentencePart.Kind kind = token.folded().equals(":") ? SentencePart.Kind.COLON : SentencePart.Kind.COMMA;
            keep(before, new SentencePart(kind, at, at + 1, Features.NONE, List.of()), 0);
        }
        double gap = tongue.knows(token.folded()) ? LISTED : UNLISTED;
        keep(before, new SentencePart(SentencePart.Kind.GAP, at, at + 1, Features.NONE, List.of()), gap);
        for (Phrase<Meant> phrase : phrases) {
            piece(before, phrase);
        }
    }

    private void piece(Division before, Phrase<Meant> phrase) {
        boolean closed = !before.isOpen();
        switch (phrase.category()) {
            case "SEP" -> add(before, phrase, SentencePart.Kind.AND, 0);
            case "SEPOR" -> add(before, phrase, SentencePart.Kind.OR, CHOICE);
            case "COUNT" -> {
                if (before.isOpen() && endsAt(phrase.to()) && (before.nothingDone() || !acts(phrase))) {
                    add(before, phrase, SentencePart.Kind.COUNT, 1);
                }
            }
            case "MANNER" -> add(before, phrase, SentencePart.Kind.MANNER, phrase.weight() + MANNER);
            case "ADJUNCT" -> add(before, phrase, SentencePart.Kind.ABOUT, phrase.weight() + ABOUT);
            case "FRAG" -> {
                boolean whole = phrase.from() == 0 && phrase.to() == sentence.size();
                boolean placed = whole || !phrase.features().has("alone");
                if (placed && before.isOpen() && endsAt(phrase.to())) {
                    add(before, phrase, SentencePart.Kind.FRAGMENT, phrase.weight() + FRAGMENT);
                }
            }
            case "ELSE" -> elsewhere(before, phrase);
            case "S" -> {
                boolean others = phrase.features().is("who", "other");
                add(
                        before,
                        phrase,
                        others ? SentencePart.Kind.ABOUT : SentencePart.Kind.CLAUSE,
                        phrase.weight() + (others ? ABOUT : CLAUSE) + crowding(before, phrase));
            }
            case "ACT" -> {
                String form = phrase.features().get("form").orElse("");
                double more = switch (form) {
                    case "base" -> !before.tells() ? 0 : tellsOn(phrase) ? TOLD_ON : GOES_ON;
                    case "3" -> before.turnsAway() ? TURNED_AWAY : before.goesOn() ? STILL_TOLD : THIRD_PERSON;
                    case "n", "ing", "pass", "having" -> 0;
                    default -> Double.NaN;
                };
                boolean earlier = form.equals("having");
                boolean onlyFresh = !form.equals("base") && !earlier;
                boolean follows = form.equals("pass") && before.isBeside();
                boolean mayFollow = !phrase.features().has("later")
                        || before.isOpen()
                        || before.lastDone().filter(SentencePart::acts).isPresent();
                boolean may = !(onlyFresh && closed && !follows)
                        && mayFollow
                        && !before.maySayWhatIsForbidden()
                        && !leavesWhoOpen(phrase);
                if (!Double.isNaN(more) && may) {
                    boolean others = phrase.features().is("who", "other");
                    add(
                            before,
                            phrase,
                            others ? SentencePart.Kind.ABOUT : SentencePart.Kind.CLAUSE,
                            phrase.weight() + CLAUSE + more + (earlier ? 0 : crowding(before, phrase)));
                }
            }
            default -> {}
        }
    }

    /** Whether the words of an order may as well go on with what is told of somebody. */
    private boolean tellsOn(Phrase<Meant> order) {
        return chart.from(order.from()).stream()
                .anyMatch(phrase -> phrase.to() == order.to()
                        && phrase.category().equals("ACT")
                        && phrase.features().is("form", "3"));
    }

    /** 'The attack being directed low, …': what is told so before something else may have been done by either of the two. */
    private boolean leavesWhoOpen(Phrase<Meant> phrase) {
        int end = phrase.to();
        return (phrase.features().is("form", "pass") || phrase.features().is("form", "having"))
                && phrase.meant().stream().anyMatch(Segmentation::isOfOneOfThem)
                && end + 1 < sentence.size()
                && !sentence.get(end).isWord()
                && IntStream.range(phrase.from() + 1, end).anyMatch(at -> isBeing(phrase.from(), at));
    }

    /** Salutes, masks and waiting are of both as a rule: 'the salute being made, masks are put on'. */
    private static boolean isOfOneOfThem(Meant meant) {
        return !(meant instanceof Meant.Does does
                && (does.action() instanceof Action.Salute
                        || does.action() instanceof Action.Mask
                        || does.action() instanceof Action.Answer));
    }

    /** Whether a participle of 'to be' stands behind a noun that begins here: 'the parry being'. */
    private boolean isBeing(int noun, int at) {
        return chart.from(noun).stream().anyMatch(phrase -> phrase.category().equals("NP") && phrase.to() == at)
                && chart.from(at).stream()
                        .anyMatch(word -> word.to() == at + 1 && word.features().has("bg"));
    }

    private void elsewhere(Division before, Phrase<Meant> opening) {
        if (before.isOpen() || !opening.features().has("top")) {
            elsewhere.told(opening).ifPresent(piece -> keep(before, piece, opening.weight() + ABOUT + ELSEWHERE));
        }
    }

    /** Whether the words of a phrase may also be a thing that is done: 'parry 6, then 4'. */
    private boolean acts(Phrase<Meant> phrase) {
        return chart.from(phrase.from()).stream()
                .anyMatch(other -> other.to() == phrase.to()
                        && other.category().equals("ACT")
                        && !other.meant().isEmpty());
    }

    /** Whether a thought may end before this token. */
    private boolean endsAt(int at) {
        return at == sentence.size()
                || !sentence.get(at).isWord()
                || !sentence.get(at - 1).isWord()
                || chart.from(at).stream().anyMatch(phrase -> ENDING.contains(phrase.category()));
    }

    /**
     * A clause directly behind a clause, without a sign or an 'and' between them, is seldom meant: 'advance lunge'; but
     * 'hold while leaders beat'.
     */
    private double crowding(Division before, Phrase<Meant> phrase) {
        Optional<SentencePart> last = before.lastDone();
        if (last.isEmpty() && before.last().filter(this::isTale).isPresent()) {
            return TALE_BEFORE;
        }
        if (last.isEmpty() || last.get().isForm("having") || phrase.features().has("sub")) {
            return 0;
        }
        if (phrase.from() - last.get().from() > 1 || last.get().features().has("deny")) {
            return CROWDED_PHRASE;
        }
        return phrase.meant().isEmpty() || !last.get().acts() ? CROWDED_TRIFLE : CROWDED;
    }

    /** Whether it tells what another does without a word that makes it a time or a reason: 'he parries', not 'when he parries'. */
    private boolean isTale(SentencePart piece) {
        return piece.kind() == SentencePart.Kind.ABOUT
                && chart.from(piece.from()).stream()
                        .anyMatch(phrase -> phrase.category().equals("PERSON")
                                && phrase.features().is("who", "other"));
    }

    private void add(Division before, Phrase<Meant> phrase, SentencePart.Kind kind, double cost) {
        boolean about = kind == SentencePart.Kind.ABOUT || kind == SentencePart.Kind.MANNER;
        boolean his = kind == SentencePart.Kind.ABOUT && phrase.category().equals("S");
        List<Meant> meant = about && !his ? List.of() : phrase.meant();
        keep(before, new SentencePart(kind, phrase.from(), phrase.to(), phrase.features(), meant), cost);
    }

    /** Keeps a division, once if several mean the same, in the order of what they cost. */
    private void keep(Division before, SentencePart piece, double cost) {
        List<Division> kept = best.get(piece.to());
        if (kept.size() == KEPT && kept.get(KEPT - 1).cost() <= before.cost() + cost) {
            return;
        }
        Division division = before.with(piece, cost);
        for (int one = 0; one < kept.size(); one++) {
            if (kept.get(one).meansTheSame(division)) {
                if (kept.get(one).cost() <= division.cost()) {
                    return;
                }
                kept.remove(one);
                break;
            }
        }
        int place = kept.size();
        while (place > 0 && kept.get(place - 1).cost() > division.cost()) {
            place--;
        }
        kept.add(place, division);
        if (kept.size() > KEPT) {
            kept.remove(KEPT);
        }
    }
}
