package org.drillwright.translation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Translations;
import org.drillwright.model.Turn;
import org.drillwright.notation.MeasureCue;
import org.drillwright.notation.Utterance;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/**
 * Says drills in another language. A turn is said by the grammar from what was read, or as the school has translated it,
 * and only if the words, read in that language, come to the same actions; what was not read whole stays as it is. Free
 * words are those of the school's translations, or stay.
 */
public final class Interpreter {

    /** So many words more than the actions need tell something beside; one is an article. */
    private static final int BESIDE = 2;

    private final School school;
    private final School there;
    private final Language into;
    private final Translations own;

    /** @param own what the school has translated */
    public Interpreter(School school, Language into, Translations own) {
        this.school = school;
        this.into = into;
        this.own = own;
        this.there = school.in(into, this::word);
    }

    /** The school as its cards have it in the other language. */
    public School there() {
        return there;
    }

    /** The name of a level, a set or a fundamental; as it is if there is no other. */
    public String word(String name) {
        return own.of(name)
                .or(() -> UsualWords.standard().of(name, school.language(), into))
                .orElse(name);
    }

    /** Whether a name of the school's has no other in the other language. */
    public boolean isUnknown(String name) {
        return !school.language().equals(into)
                && own.of(name).isEmpty()
                && UsualWords.standard().of(name, school.language(), into).isEmpty();
    }

    /** A drill in the other language; one that is written in it stays as it is. */
    public Rendering render(Subject drill) {
        Language from = drill.drill().language().orElseGet(() -> new Language(drill.tongue()));
        return new One(drill, from).render();
    }

    /** One drill in the making. */
    private final class One {

        private final Subject subject;
        private final Drill drill;
        private final Language from;
        private final boolean same;
        private final Map<FieldPath, Language> apart = new LinkedHashMap<>();
        private final List<FieldPath> staying = new ArrayList<>();
        private final Map<FieldPath, String> beside = new LinkedHashMap<>();
        private final Map<String, Message> wanted = new LinkedHashMap<>();
        private final Set<String> used = new LinkedHashSet<>();
        private final Map<String, Message> unlike = new LinkedHashMap<>();
        private int turns;

        One(Subject subject, Language from) {
            this.subject = subject;
            this.drill = subject.drill();
            this.from = from;
            this.same = from.equals(into);
        }

        Rendering render() {
            Drill made = new Drill(
                    drill.id(),
                    free("title", drill.title()),
                    named("level", drill.level()),
                    drill.form(),
                    drill.weapon(),
                    drill.hands(),
                    drill.worksOn().stream()
                            .map(work -> named("works-on", work))
                            .toList(),
                    drill.needs(),
                    gear(),
                    free("purpose", drill.purpose()),
                    part("start", drill.start()),
                    part("opening", drill.opening()),
                    steps(),
                    part("closing", drill.closing()),
                    drill.repeat(),
                    drill.swap(),
                    drill.tempo(),
                    free("note", drill.note()),
                    list("cautions", drill.cautions()),
                    drill.variantOf(),
                    drill.tags(),
                    drill.revised(),
                    drill.accept(),
                    Optional.of(into),
                    same ? Optional.empty() : Optional.of(from));
            return new Rendering(
                    subject, subject.told(made, there), from, apart, staying, beside, turns, wanted, used, unlike);
        }

        private List<String> gear() {
            List<String> items = school.gearOf(drill);
            List<String> said = new ArrayList<>();
            for (int at = 0; at < items.size(); at++) {
                String item = items.get(at);
                used.add(Translations.plain(item));
                FieldPath place = FieldPath.of("gear").item(at);
                said.add(own.of(item)
                        .or(() -> UsualWords.standard().of(item, from, into))
                        .orElseGet(() -> free(place, Message.plain("gear"), item)));
            }
            return said;
        }

        /** A name of the school's. */
        private String named(String key, String name) {
            String plain = Translations.plain(name);
            used.add(plain);
            if (isUnknown(name)) {
                wanted.putIfAbsent(plain, ofThis(Message.plain(key)));
            }
            return word(name);
        }

        private List<String> list(String key, List<String> texts) {
            List<String> said = new ArrayList<>();
            for (int at = 0; at < texts.size(); at++) {
                said.add(free(FieldPath.of(key).item(at), Message.plain(key), texts.get(at)));
            }
            return said;
        }

        private String free(String key, String text) {
            return free(FieldPath.of(key), Message.plain(key), text);
        }

        /** Words that nothing reads: as the school has translated them, or as they are. */
        private String free(FieldPath place, Message where, String text) {
            if (same || text.isBlank()) {
                return text;
            }
            Optional<String> said = own.of(text);
            used.add(Translations.plain(text));
            if (said.isEmpty()) {
                wanted.putIfAbsent(Translations.plain(text), ofThis(where));
                apart.put(place, from);
            }
            return said.orElse(text);
        }

        private Message ofThis(Message where) {
            return Message.of(Interpreter.class, "of.drill", where, drill.id());
        }

        /** A key of a count. */
        private Message at(int at, String key) {
            return Message.of(Interpreter.class, "at.count", subject.count(at), key);
        }

        private String part(String name, String text) {
            Utterance read = subject.script().part(name);
            return turn(FieldPath.of(name), Message.plain(name), text, text, read, Optional.empty());
        }

        private List<Step> steps() {
            List<Step> said = new ArrayList<>();
            for (int at = 0; at < drill.steps().size(); at++) {
                said.add(step(at, drill.steps().get(at)));
            }
            return said;
        }

        private Step step(int at, Step step) {
            FieldPath place = Subject.stepPath(at);
            return new Step(
                    step.number(),
                    free(place.key("call"), at(at, "call"), step.call()),
                    side(at, Side.LEADER, step),
                    side(at, Side.FOLLOWER, step),
                    distance(place.key("distance"), at(at, "distance"), step.distance()),
                    free(place.key("safety"), at(at, "safety"), step.safety()),
                    free(place.key("note"), at(at, "note"), step.note()));
        }

        /** In a solo drill the caller's words are free. */
        private Optional<Turn> side(int at, Side side, Step step) {
            FieldPath place = Subject.stepPath(at).key(side.word());
            Message where = at(at, side.word());
            boolean callers = drill.form() == Form.SOLO && side == Side.LEADER;
            return step.turn(side)
                    .map(turn -> callers
                            ? called(place, where, turn)
                            : side(place, where, turn, subject.turn(at, side), side));
        }

        /** A caller's words may be those of the other language already. */
        private Turn called(FieldPath place, Message where, Turn turn) {
            boolean there = isRead(turn.say(), into) && !isRead(turn.say(), from);
            return there ? turn : Turn.of(free(place, where, turn.say()));
        }

        private boolean isRead(String text, Language language) {
            return subject.reader().read(text, language.word()).isRead();
        }

        private Turn side(FieldPath place, Message where, Turn turn, Utterance read, Side side) {
            String said = turn(place, where, turn.say(), turn.read(), read, Optional.of(side));
            String behind = beside.containsKey(place) ? Rendering.inBrackets(beside.get(place)) : "";
            return said.equals(turn.say())
                    ? turn
                    : behind.isEmpty()
                            ? Turn.of(said)
                            : new Turn(said, said.substring(0, said.length() - behind.length()));
        }

        /**
         * Words that were read, said in the other language if they can be.
         *
         * @param text what is printed
         * @param carrying the words that carry its meaning
         * @param side whose turn it is; empty of what is told to both
         */
        private String turn(
                FieldPath place, Message where, String text, String carrying, Utterance read, Optional<Side> side) {
            if (text.isBlank()) {
                return text;
            }
            turns++;
            if (same) {
                return text;
            }
            String plain = Translations.plain(text);
            used.add(plain);
            boolean whole = Same.isWhole(read) && Same.isOfOne(subject.reader().read(carrying), side);
            Optional<String> given = own.of(text);
            Optional<String> translated = given.filter(words -> whole && says(words, read, side));
            if (given.isPresent() && translated.isEmpty()) {
                unlike.put(plain, whole ? readAs(given.get()) : Message.of(Interpreter.class, "turn.not.read"));
            }
            if (translated.isPresent()) {
                return translated.get();
            }
            Optional<TranslatedTurn> grammar =
                    whole ? grammar(read, side).map(said -> whole(text, carrying, said, read, side)) : Optional.empty();
            if (whole
                    && given.isEmpty()
                    && grammar.filter(said -> said.rest().isEmpty()).isEmpty()) {
                wanted.putIfAbsent(plain, ofThis(where));
            }
            if (grammar.isEmpty()) {
                staying.add(place);
                apart.put(place, new Language(subject.reader().tag(carrying)));
                return text;
            }
            String rest = grammar.get().rest();
            if (!rest.isEmpty()) {
                beside.put(place, rest);
            }
            return grammar.get().said() + (rest.isEmpty() ? "" : Rendering.inBrackets(rest));
        }

        /** With how and when; where other words carry the meaning, the printed ones are the rest. */
        private TranslatedTurn whole(String text, String carrying, String said, Utterance read, Optional<Side> side) {
            if (!tellsMore(carrying, read)) {
                return new TranslatedTurn(said, "");
            }
            TranslatedTurn.Asked asked = new TranslatedTurn.Asked(
                    words -> Same.says(subject.reader().read(words, from.word()), read, side),
                    words -> !tellsMore(words, read),
                    words -> words(words) <= words(subject.reader().said(read, from.word())),
                    words -> says(words, read, side));
            TranslatedTurn whole =
                    TranslatedTurn.of(carrying, said, Same.deeds(read, side).size() == 1, from, into, asked);
            return whole.rest().isEmpty() || carrying.equals(text) ? whole : new TranslatedTurn(whole.said(), text);
        }

        /** Whether words tell more than their actions: how a thing is done, when or why. */
        private boolean tellsMore(String words, Utterance read) {
            return subject.reader().tellsBeside(words)
                    || (words(words) >= words(subject.reader().said(read, from.word())) + BESIDE
                            && !saysJust(words, read));
        }

        private boolean saysJust(String words, Utterance read) {
            return read.actions().size() == 1
                    && subject.reader().saysJust(words, read.actions().get(0), from.word());
        }

        private static int words(String text) {
            return text.strip().split("[\\s'’-]+").length;
        }

        private Message readAs(String words) {
            Utterance read = subject.reader().read(words, into.word());
            return read.isRead()
                    ? Message.of(Interpreter.class, "read.as", subject.reader().said(read, from.word()))
                    : Message.of(Interpreter.class, "not.read");
        }

        private Optional<String> grammar(Utterance read, Optional<Side> side) {
            return Optional.of(subject.reader().said(read, into.word()))
                    .filter(words -> !words.isBlank() && says(words, read, side));
        }

        private boolean says(String words, Utterance meant, Optional<Side> side) {
            return Same.says(subject.reader().read(words, into.word()), meant, side);
        }

        private String distance(FieldPath place, Message where, String text) {
            Optional<MeasureCue> cue = subject.reader().cue(text, from.word());
            return same
                    ? text
                    : cue.map(known -> subject.reader().cue(known, into.word()))
                            .filter(said ->
                                    subject.reader().cue(said, into.word()).equals(cue))
                            .orElseGet(() -> free(place, where, text));
        }
    }
}
