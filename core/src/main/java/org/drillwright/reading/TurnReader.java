package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drillwright.grammar.Chart;
import org.drillwright.grammar.Sense;
import org.drillwright.lexicon.Spelling;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Frames;
import org.drillwright.meaning.Meant;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.MeasureCue;
import org.drillwright.notation.OtherReading;
import org.drillwright.notation.OtherReading.Kind;
import org.drillwright.notation.Telling;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;

/**
 * Reads the words of a turn, an opening, a closing or a start, in whichever of its languages accounts for most of them;
 * never throws, whatever stands there.
 */
public final class TurnReader {

    /** Words of one sentence that are looked at; what stands behind them is unread. */
    private static final int LONGEST = 60;

    /** Unread words of one text for which it is asked what was meant; where there are more, it is no slip. */
    private static final int SLIPS = 6;

    /** Readings of one text beside the likeliest. */
    private static final int OTHERS = 4;

    /** What a reading may cost more than the likeliest; a word passed over costs far more. */
    private static final double NEARLY = 1.5;

    /** What it may cost more and still be taken as meant just as well: less than any argument or construction costs. */
    private static final double AS_LIKELY = 0.25;

    private static final List<String> FRAMES = List.of("feet", "strokes", "parries", "blade", "answers", "courtesy");

    private final AllLanguageTables tongues;
    private final Sense<Meant> frames;
    private final Optional<String> home;
    private final Map<String, String> words;
    private final Lately<String, Attempt> attempts = new Lately<>();
    private final Lately<ForBoth, Utterance> forBoth = new Lately<>();

    // What does not depend on which language is looked at first is shared by the readers that differ in nothing else.
    private final Map<String, OwnWords> own;
    private final Lately<InOne, Attempt> attemptsInOne;
    private final Lately<InOne, List<String>> slips;
    private final Lately<InOne, Optional<MeasureCue>> cues;
    private final Lately<String, List<Listing>> listings;
    private final Map<Named, PartnerNamed> partners;
    private final Map<String, Saying> sayings;
    private final Map<String, TurnReader> homes;
    private volatile Optional<Glossary> glossary = Optional.empty();

    /** @param frames what verbs and nouns mean */
    private TurnReader(AllLanguageTables tongues, Sense<Meant> frames, Map<String, String> words) {
        this.tongues = tongues;
        this.frames = frames;
        this.home = Optional.empty();
        this.words = Map.copyOf(words);
        this.own = new ConcurrentHashMap<>();
        this.attemptsInOne = new Lately<>();
        this.slips = new Lately<>();
        this.cues = new Lately<>();
        this.listings = new Lately<>();
        this.partners = new ConcurrentHashMap<>();
        this.sayings = new ConcurrentHashMap<>();
        this.homes = new ConcurrentHashMap<>();
    }

    /** @param home the tag of the language that is looked at first */
    private TurnReader(TurnReader same, String home) {
        this.tongues = same.tongues;
        this.frames = same.frames;
        this.home = Optional.of(home);
        this.words = same.words;
        this.own = same.own;
        this.attemptsInOne = same.attemptsInOne;
        this.slips = same.slips;
        this.cues = same.cues;
        this.listings = same.listings;
        this.partners = same.partners;
        this.sayings = same.sayings;
        this.homes = same.homes;
    }

    /** The reader that comes with the program. */
    public static TurnReader standard() {
        return Standard.READER;
    }

    private static final class Standard {
        private static final TurnReader READER = asleep();
    }

    /** A reader of its own, of which no language was asked yet. */
    static TurnReader asleep() {
        return with(new AllLanguageTables(), Frames.trusted(frameLines()));
    }

    /** A reader to which verbs and nouns mean something else, of the same languages as others. */
    static TurnReader with(AllLanguageTables tongues, Sense<Meant> frames) {
        return new TurnReader(tongues, frames, Map.of());
    }

    /** The frames that come with the program, as their files have them. */
    static List<String> frameLines() {
        return FRAMES.stream()
                .flatMap(name -> LanguageTables.lines("frames/" + name + ".frames").stream())
                .toList();
    }

    /**
     * This reader with a school's own words.
     *
     * @param words each with words that say the same
     */
    public TurnReader with(Map<String, String> words) {
        if (words.isEmpty()) {
            return this;
        }
        TurnReader reader = new TurnReader(tongues, frames, words);
        return home.map(reader::at).orElse(reader);
    }

    /**
     * This reader for texts that are most likely in one language: what is read whole in it is of it, and no other language
     * is looked at; of the rest is what no other language reads better. There is one for each language, which remembers what it has
     * read for all who ask.
     *
     * @param tag of that language; one that is not among {@link #tags()} changes nothing
     */
    public TurnReader at(String tag) {
        return tags().contains(tag) ? homes.computeIfAbsent(tag, one -> new TurnReader(this, one)) : this;
    }

    /**
     * Why an entry among a school's own words does not work; empty if it does.
     *
     * @param say the school's words
     * @param means words that say the same
     */
    public Optional<OwnWordFlaw> flaw(String say, String means) {
        if (tongues.from(home)
                .allMatch(tongue ->
                        tongue.words(say).isEmpty() || tongue.words(means).isEmpty())) {
            return Optional.of(OwnWordFlaw.EMPTY);
        }
        if (tongues.from(home).noneMatch(tongue -> tongue.words(means).stream().allMatch(tongue::knows))) {
            return Optional.of(OwnWordFlaw.MEANING_UNKNOWN);
        }
        if (tongues.from(home).anyMatch(tongue -> tongue.isManner(say))) {
            return Optional.of(OwnWordFlaw.MANNER);
        }
        Utterance said = read(say);
        boolean same = Spelling.fold(say.strip()).equals(Spelling.fold(means.strip()))
                || (said.isRead()
                        && !said.clauses().isEmpty()
                        && said.actions().equals(read(means).actions()));
        return same ? Optional.of(OwnWordFlaw.NO_CHANGE) : Optional.empty();
    }

    /** The tags of the languages it reads. */
    public List<String> tags() {
        return tongues.tags();
    }

    /** Whether a language accounts for every word of these texts; one that is not among {@link #tags()} does for none. */
    public boolean accountsFor(Stream<String> texts, String tag) {
        return tags().contains(tag)
                && texts.allMatch(text -> inOne(text, tongues.of(tag)).left() == 0);
    }

    /** The tag of the language that lists most of the words of these texts; the one that is looked at first, where several list as many. */
    public String mostLikely(List<String> texts) {
        List<List<Listing>> listed =
                texts.stream().map(text -> listings.ask(text, this::listings)).toList();
        return tongues.from(home)
                .map(tongue -> new Listing(
                        tongue,
                        listed.stream()
                                .flatMap(List::stream)
                                .filter(one -> one.tongue().equals(tongue))
                                .mapToLong(Listing::known)
                                .sum()))
                .reduce((one, other) -> other.known() > one.known() ? other : one)
                .map(most -> most.tongue().tag())
                .orElseThrow();
    }

    /** @param known words that a language lists */
    private record Listing(LanguageTables tongue, long known) {}

    /** How many words of a text each language lists. */
    private List<Listing> listings(String text) {
        return tongues.all()
                .map(tongue -> new Listing(tongue, tongue.known(tongue.lexicon().sentences(text))))
                .toList();
    }

    /** What a text says is done. */
    public Utterance read(String text) {
        return remembered(text).utterance();
    }

    /** A text told to both, and the side by which it is told. */
    private record ForBoth(String text, Side teller) {}

    /** A language, and the side by which a text is told. */
    private record Named(String tag, Side teller) {}

    /**
     * What a start says, which is told to both; nobody steps, lunges or attacks in it.
     *
     * @param teller the side by which it is told: the partner of whom it tells is the other one
     */
    public Utterance readForBoth(String text, Side teller) {
        return forBoth.ask(new ForBoth(text, teller), this::toldToBoth);
    }

    private Utterance toldToBoth(ForBoth told) {
        Attempt plain = remembered(told.text());
        Cut cut = cut(told.text(), plain.tongue());
        if (plain.utterance().actions().stream().anyMatch(AroundCounts::isNoStart)) {
            plain = attempt(cut, AroundCounts::of);
        }
        PartnerNamed partner = partners.computeIfAbsent(
                new Named(cut.tongue().tag(), told.teller()), named -> new PartnerNamed(cut.tongue(), told.teller()));
        List<List<Token>> named = cut.sentences().stream().map(partner::in).toList();
        Utterance best = plain.utterance();
        if (!named.equals(cut.sentences())) {
            Attempt byName = attempt(new Cut(cut.tongue(), named, cut.known()), AroundCounts::of);
            boolean tells = byName.utterance().clauses().stream()
                    .anyMatch(clause ->
                            clause.subject().equals(Optional.of(told.teller().other())));
            best = tells && byName.left() <= plain.left() ? byName.utterance() : best;
        }
        return AroundCounts.without(best, told.text(), AroundCounts::isNoStart);
    }

    /** What a text says that is told when the drill is over: nobody attacks any more, and what may say so is not understood. */
    public Utterance readParting(String text) {
        Attempt plain = remembered(text);
        Utterance told = plain.utterance().actions().stream().anyMatch(AroundCounts::putsMaskOn)
                ? attempt(cut(text, plain.tongue()), AroundCounts::ofParting).utterance()
                : plain.utterance();
        return AroundCounts.without(told, text, AroundCounts::isNoParting);
    }

    private Attempt remembered(String text) {
        return attempts.ask(text, this::best);
    }

    /** A text or a word, taken as one of a language. */
    private record InOne(String words, LanguageTables tongue) {}

    /**
     * A text read in one language.
     *
     * @param known its words that the language lists
     * @param cost of how its sentences are divided: the less, the more likely it is meant
     */
    private record Attempt(LanguageTables tongue, Utterance utterance, long known, double cost) {
        int left() {
            return utterance.unread().size();
        }

        /** A language that knows fewer of the words is not the text's because it passes over fewer: only if it reads it all. */
        boolean isBetterThan(Attempt other) {
            return (left() < other.left() && (known >= other.known || utterance.isRead()))
                    || (left() == other.left() && known == other.known && cost < other.cost);
        }
    }

    /**
     * A text cut into the words of one language.
     *
     * @param sentences with a school's own words and words cut short replaced by those that they stand for
     * @param known as many of its words the language lists
     */
    private record Cut(LanguageTables tongue, List<List<Token>> sentences, long known) {}

    private Cut cut(String text, LanguageTables tongue) {
        List<List<Token>> sentences = tongue.lexicon().sentences(text);
        return new Cut(tongue, replaced(sentences, tongue), tongue.known(sentences));
    }

    /** What is read whole in the language that is looked at first is of it. */
    private Attempt best(String text) {
        return home.map(tag -> inOne(text, tongues.of(tag)))
                .filter(attempt -> attempt.left() == 0)
                .orElseGet(() -> bestOfAll(text));
    }

    /**
     * The language of most words is tried first; another only if it knows as many, or something is left over. Where two know
     * as many and leave as many over, it is the one that is looked at first, if that is among them.
     */
    private Attempt bestOfAll(String text) {
        List<Cut> cuts = tongues.from(home)
                .map(tongue -> cut(text, tongue))
                .sorted(Comparator.comparingLong((Cut cut) -> -cut.known()))
                .toList();
        Attempt best = attempt(cuts.get(0));
        for (Cut cut : cuts.subList(1, cuts.size())) {
            if (best.utterance().isRead() && cut.known() < best.known()) {
                break;
            }
            Attempt next = attempt(cut);
            boolean settled = home.equals(Optional.of(best.tongue().tag())) && next.left() == best.left();
            best = !settled && next.isBetterThan(best) ? next : best;
        }
        return best;
    }

    /**
     * What a text says is done, read as one of a language whatever it is.
     *
     * @throws IllegalArgumentException if the language is not among {@link #tags()}
     */
    public Utterance read(String text, String tag) {
        return read(text, tongues.of(tag));
    }

    Utterance read(String text, LanguageTables tongue) {
        return inOne(text, tongue).utterance();
    }

    private Attempt inOne(String text, LanguageTables tongue) {
        return attemptsInOne.ask(new InOne(text, tongue), asked -> attempt(cut(asked.words(), asked.tongue())));
    }

    private Attempt attempt(Cut cut) {
        return attempt(cut, ways -> ways);
    }

    /** @param fit the divisions of a sentence that may be meant where the text stands */
    private Attempt attempt(Cut cut, UnaryOperator<List<Segmentation.Division>> fit) {
        LanguageTables tongue = cut.tongue();
        List<List<Token>> sentences = cut.sentences();
        List<List<Segmentation.Division>> divisions = new ArrayList<>();
        for (List<Token> whole : sentences) {
            List<Segmentation.Division> ways =
                    fit.apply(divisions(whole.subList(0, Math.min(LONGEST, whole.size())), tongue));
            divisions.add(likely(sentences.size() == 1 ? noMereCount(ways) : ways));
        }
        Clauses likeliest = clauses(tongue, sentences, divisions, -1, 0, false);
        boolean mayTellOfOneself = likeliest.mayTellOfOneself();
        boolean tellsOfYourPartner = likeliest.tellsOfYourPartner();
        Utterance best = likeliest.utterance();
        List<OtherReading> others = new ArrayList<>();
        if (mayTellOfOneself) {
            others.add(new OtherReading(
                    clauses(tongue, sentences, divisions, -1, 0, false).ofOneself(), Kind.OF_ONESELF));
        } else if (best.telling() == Telling.OF_ANOTHER) {
            ofOneself(tongue, sentences, divisions).ifPresent(others::add);
        }
        if (tellsOfYourPartner) {
            others.add(new OtherReading(
                    clauses(tongue, sentences, divisions, -1, 0, false).ofYourPartner(), Kind.OF_YOUR_PARTNER));
        }
        if (likeliest.tellsOfEarlier()) {
            others.add(new OtherReading(
                    clauses(tongue, sentences, divisions, -1, 0, true).utterance(), Kind.NEARLY));
        }
        for (int sentence = 0; sentence < divisions.size(); sentence++) {
            for (int which = 1; which < divisions.get(sentence).size() && others.size() < OTHERS; which++) {
                Utterance other = clauses(tongue, sentences, divisions, sentence, which, false)
                        .utterance();
                boolean known = other.actions().equals(best.actions())
                        || others.stream()
                                .anyMatch(one -> one.utterance().actions().equals(other.actions()));
                if (!known) {
                    List<Segmentation.Division> all = divisions.get(sentence);
                    boolean asLikely = all.get(which).cost() <= all.get(0).cost() + AS_LIKELY;
                    others.add(new OtherReading(other, asLikely ? Kind.AS_LIKELY : Kind.NEARLY));
                }
            }
        }
        double cost =
                divisions.stream().mapToDouble(likely -> likely.get(0).cost()).sum();
        return new Attempt(tongue, best.orElse(others), cut.known(), cost);
    }

    /** What another does, in a less likely division of which more is understood. */
    private Optional<OtherReading> ofOneself(
            LanguageTables tongue, List<List<Token>> sentences, List<List<Segmentation.Division>> divisions) {
        for (int sentence = 0; sentence < divisions.size(); sentence++) {
            for (int which = 1; which < divisions.get(sentence).size(); which++) {
                Clauses told = clauses(tongue, sentences, divisions, sentence, which, false);
                if (told.mayTellOfOneself()) {
                    return Optional.of(new OtherReading(told.ofOneself(), Kind.OF_ONESELF));
                }
            }
        }
        return Optional.empty();
    }

    /** A number that is all there is of a text is no count but the position that it stands for. */
    private static List<Segmentation.Division> noMereCount(List<Segmentation.Division> divisions) {
        if (!isMereCount(divisions.get(0))) {
            return divisions;
        }
        List<Segmentation.Division> positions = divisions.stream()
                .filter(one -> one.gaps().isEmpty() && !isMereCount(one))
                .toList();
        return positions.isEmpty() ? divisions : positions;
    }

    private static boolean isMereCount(Segmentation.Division division) {
        return division.pieces().size() == 1 && division.pieces().get(0).kind() == SentencePart.Kind.COUNT;
    }

    /** The divisions that are nearly as likely as the best and leave over the same words. */
    private static List<Segmentation.Division> likely(List<Segmentation.Division> divisions) {
        Segmentation.Division best = divisions.get(0);
        return divisions.stream()
                .filter(one -> one.cost() <= best.cost() + NEARLY && one.gaps().equals(best.gaps()))
                .toList();
    }

    private Clauses clauses(
            LanguageTables tongue,
            List<List<Token>> sentences,
            List<List<Segmentation.Division>> divisions,
            int varied,
            int which,
            boolean hadBefore) {
        Clauses clauses = new Clauses(tongue, hadBefore);
        for (int at = 0; at < sentences.size(); at++) {
            List<Token> whole = sentences.get(at);
            int end = Math.min(LONGEST, whole.size());
            clauses.sentence(
                    whole.subList(0, end),
                    divisions.get(at).get(at == varied ? which : 0).pieces());
            whole.subList(end, whole.size()).forEach(clauses::beyond);
        }
        return clauses;
    }

    private List<List<Token>> replaced(List<List<Token>> sentences, LanguageTables tongue) {
        OwnWords replaced =
                words.isEmpty() ? OwnWords.NONE : own.computeIfAbsent(tongue.tag(), tag -> OwnWords.of(words, tongue));
        return sentences.stream()
                .map(replaced::in)
                .map(sentence -> tongue.lexicon().inFull(sentence, tongue::knows))
                .toList();
    }

    private List<Segmentation.Division> divisions(List<Token> sentence, LanguageTables tongue) {
        Chart<Meant> chart = Chart.of(tongue.lexicon(), tongue.grammar(), frames, sentence);
        return Segmentation.of(tongue, sentence, chart);
    }

    /**
     * A distance cue: one measure or two; empty if it holds anything else.
     *
     * @param tag of the language that is looked at first
     */
    public Optional<MeasureCue> cue(String text, String tag) {
        return tongues.from(Optional.of(tag).filter(tags()::contains))
                .flatMap(tongue -> cues.ask(new InOne(text, tongue), one -> cue(one.words(), one.tongue())).stream())
                .findFirst();
    }

    private Optional<MeasureCue> cue(String text, LanguageTables tongue) {
        List<Token> words =
                cut(text, tongue).sentences().stream().flatMap(List::stream).toList();
        return words.size() > LONGEST
                ? Optional.empty()
                : Cues.read(words, Chart.of(tongue.lexicon(), tongue.grammar(), frames, words));
    }

    /**
     * A distance cue in a language; it is read as just this.
     *
     * @throws IllegalArgumentException if the language is not among {@link #tags()}
     */
    public String cue(MeasureCue cue, String tag) {
        return saying(tag).cue(cue);
    }

    /**
     * The word that an unread one was perhaps meant to be: one that is near, and with which more of the text is read; none for a
     * word that is listed: who wrote it meant it.
     *
     * @param unread the word's place in the text
     */
    public Optional<String> meant(String text, Span unread) {
        Attempt attempt = remembered(text);
        if (attempt.left() > SLIPS) {
            return Optional.empty();
        }
        String word = Spelling.fold(text.substring(unread.start(), unread.end()));
        if (attempt.tongue().lexicon().lists(word)) {
            return Optional.empty();
        }
        return slips
                .ask(
                        new InOne(word, attempt.tongue()),
                        asked -> Nearest.slips(
                                asked.words(), asked.tongue().lexicon().single()))
                .stream()
                .limit(3)
                .filter(candidate -> read(replaced(text, unread, candidate), attempt.tongue())
                                .unread()
                                .size()
                        < attempt.left())
                .findFirst();
    }

    private static String replaced(String text, Span span, String word) {
        return text.substring(0, span.start()) + word + text.substring(span.end());
    }

    /** The words of the trade as people look them up. */
    public Glossary glossary() {
        Glossary made = glossary.orElseGet(() -> new Glossary(this));
        glossary = Optional.of(made);
        return made;
    }

    /** The tag of the language that a text is read in. */
    public String tag(String text) {
        return remembered(text).tongue().tag();
    }

    /**
     * An action as a sentence of a language; empty if it has no words for all of it.
     *
     * @throws IllegalArgumentException if the language is not among {@link #tags()}
     */
    public Optional<String> said(Action action, String tag) {
        return saying(tag).order(action).map(Saying::sentence);
    }

    /**
     * A reading in words of the trade, in sentences that are read as just this where the language has such; what says
     * nothing in the phrase is left out.
     *
     * @throws IllegalArgumentException if the language is not among {@link #tags()}
     */
    public String said(Utterance turn, String tag) {
        return said(turn.actions(), tag);
    }

    /** Several actions of one turn, as {@link #said(Utterance, String)}. */
    public String said(List<Action> actions, String tag) {
        List<Action> told = actions.stream()
                .filter(action -> !(action instanceof Action.Aside || action instanceof Action.Unread))
                .toList();
        List<String> ways = SaidTogether.ways(told, saying(tag));
        return ways.stream().filter(way -> isReadAs(way, told, tag)).findFirst().orElse(ways.get(ways.size() - 1));
    }

    /** Whether words are one of the ways in which a language says an action, and nothing beside. */
    public boolean saysJust(String words, Action action, String tag) {
        List<String> said = tongues.of(tag).words(words);
        return saying(tag).orders(action).stream()
                .anyMatch(order -> tongues.of(tag).words(order).equals(said));
    }

    private boolean isReadAs(String text, List<Action> actions, String tag) {
        Utterance read = read(text, tag);
        return read.isRead() && read.actions().equals(actions);
    }

    private Saying saying(String tag) {
        return sayings.computeIfAbsent(tag, key -> tongues.of(key).saying());
    }

    /** The terms that words say, taken as a turn or as a name; empty if they are not read. */
    public Set<GlossaryTerm> terms(String words) {
        Utterance read = read(words);
        Set<GlossaryTerm> terms = new LinkedHashSet<>(read.isRead() ? GlossaryTerms.of(read) : Set.of());
        String plain = Spelling.fold(words.strip());
        glossary().items().stream()
                .filter(item -> item.words().values().stream().anyMatch(forms -> forms.contains(plain)))
                .map(Glossary.Item::term)
                .forEach(terms::add);
        return terms;
    }

    /** Whether a text tells more than what is played: how a thing is done, when or why, or what another does. */
    public boolean tellsBeside(String text) {
        Attempt attempt = remembered(text);
        return cut(text, attempt.tongue()).sentences().stream()
                .filter(sentence -> !sentence.isEmpty())
                .map(sentence -> sentence.subList(0, Math.min(LONGEST, sentence.size())))
                .anyMatch(sentence -> attempt.tongue().tellsHow(sentence)
                        || divisions(sentence, attempt.tongue()).get(0).pieces().stream()
                                .anyMatch(SentencePart::isBeside));
    }

    /** What a text that is no turn, such as a caution, says that both do: 'both lunge here', 'they lunge together'. */
    public List<Action> doneByBoth(String text) {
        LanguageTables tongue = remembered(text).tongue();
        return cut(text, tongue).sentences().stream()
                .filter(sentence -> !sentence.isEmpty())
                .map(sentence -> sentence.subList(0, Math.min(LONGEST, sentence.size())))
                .flatMap(sentence -> {
                    Chart<Meant> chart = Chart.of(tongue.lexicon(), tongue.grammar(), frames, sentence);
                    return DoneByBoth.in(
                            tongue,
                            sentence,
                            chart,
                            Segmentation.of(tongue, sentence, chart).get(0));
                })
                .distinct()
                .toList();
    }

    Stream<LanguageTables> tongues() {
        return tongues.all();
    }

    /** The tags of the languages that somebody has asked for so far, of any reader that comes of the same one. */
    List<String> awake() {
        return tongues.made();
    }

    /** How the first divisions of a text take it apart, for those who write a language. */
    public List<String> account(String text, String tag) {
        List<String> lines = new ArrayList<>();
        LanguageTables tongue = tongues.of(tag);
        for (List<Token> sentence : cut(text, tongue).sentences()) {
            divisions(sentence, tongue).stream().limit(3).forEach(division -> lines.add(told(sentence, division)));
        }
        return lines;
    }

    private static String told(List<Token> sentence, Segmentation.Division division) {
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%.1f", division.cost()));
        for (SentencePart piece : division.pieces()) {
            line.append(" | ").append(piece.kind()).append(' ');
            sentence.subList(piece.from(), piece.to())
                    .forEach(token -> line.append(token.folded()).append(' '));
            line.append(piece.meant().isEmpty() ? "" : "= " + piece.meant());
        }
        return line.toString();
    }
}
