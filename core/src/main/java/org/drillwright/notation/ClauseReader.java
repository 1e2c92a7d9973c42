package org.drillwright.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/**
 * Reads the words of a turn, an opening, a closing or a start into clauses.
 *
 * <p>The text is cut into lexemes. A term that is an action begins a clause, or completes the clause before it (a riposte
 * <em>by disengage</em>, a recovery <em>on guard</em>); positions, lines, targets and kinds go to the clause they stand
 * with. An action that is only spoken of ("parry <em>the thrust</em>", "as <em>he lunges</em>") is passed over.
 */
public final class ClauseReader {

    private final Vocabulary vocabulary;

    public ClauseReader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** Reads a text; never throws, whatever stands in it. */
    public Utterance read(String text) {
        Pass pass = new Pass(text);
        List<Lexeme> lexemes = vocabulary.lexemes(text);
        for (int at = 0; at < lexemes.size(); at++) {
            pass.take(lexemes.get(at), at + 1 < lexemes.size() ? Optional.of(lexemes.get(at + 1)) : Optional.empty());
        }
        pass.endSentence();
        List<Clause> clauses = pass.drafts.stream()
                .flatMap(draft -> ClauseMaker.make(draft).stream().map(clause -> doubted(clause, draft.doubts)))
                .toList();
        // What turns out to hang on nothing is known to be unread only when its sentence ends.
        List<Span> unread = pass.unread.stream()
                .sorted(Comparator.comparingInt(Span::start))
                .toList();
        return new Utterance(clauses, unread, pass.readings, pass.tradeWords);
    }

    private static Clause doubted(Clause clause, Set<Doubt> doubts) {
        return new Clause(clause.action(), clause.subject(), clause.span(), clause.join(), doubts);
    }

    /** One reading of one text from left to right. */
    private static final class Pass {

        private final String text;
        private final List<Draft> drafts = new ArrayList<>();
        private final List<Span> unread = new ArrayList<>();
        private final List<TwoReadings> readings = new ArrayList<>();
        private Optional<Lexeme> bareReturn = Optional.empty();
        private int tradeWords;

        private Optional<Draft> current = Optional.empty();
        private Optional<Side> subject = Optional.empty();

        /** The head that a second subject shares: leader on guard in sixte, follower in quarte. */
        private Optional<Term> shared = Optional.empty();

        private final Set<String> kinds = new HashSet<>();
        private Aim aim = Aim.UNSTATED;
        private Optional<Lexeme> loose = Optional.empty();
        private int times = 1;

        /** What the last small word leads one to expect. */
        private String link = "begins";

        private String det = "";
        private Optional<Side> owner = Optional.empty();
        private boolean light;
        private boolean negated;

        /** Inside words about something else: an action just spoken of, or what somebody else does. */
        private boolean spokenOf;

        private boolean others;
        private boolean othersBegan;

        private Optional<Lexeme> next = Optional.empty();

        /** Words that count only if something behind them in the segment uses them: a number, a light verb, a 'not'. */
        private Optional<Lexeme> number = Optional.empty();

        private Optional<Lexeme> lightWord = Optional.empty();
        private Optional<Lexeme> notWord = Optional.empty();

        /** Behind "make your partner": all that follows in the sentence is somebody else's. */
        private boolean caused;

        /** The action that a sentence denies from its beginning: what is done instead is not said. */
        private Optional<Lexeme> denied = Optional.empty();

        /** "Do not move": a hold, and nothing that goes anywhere. */
        private boolean still;

        /** The sentence leaves something to choose. */
        private boolean open;

        private int segmentBegan;
        private int sentenceBegan;
        private Optional<Span> segmentSide = Optional.empty();
        private final List<Span> segmentUnknown = new ArrayList<>();
        private boolean segmentKnown;

        Pass(String text) {
            this.text = text;
        }

        void take(Lexeme lexeme, Optional<Lexeme> behind) {
            next = behind;
            if (lexeme.isStop()) {
                stop(lexeme);
            } else if (lexeme.isUnknown()) {
                unknown(lexeme);
            } else {
                known(lexeme);
            }
        }

        private void stop(Lexeme lexeme) {
            if (lexeme.folded().equals(",")
                    || lexeme.folded().equals("(")
                    || lexeme.folded().equals(")")
                    || lexeme.folded().equals(":")) {
                endSegment();
                others = false;
                link = link.equals("begins") ? link : "comma";
            } else if (!lexeme.folded().equals("/")) {
                endSentence();
            }
        }

        private void unknown(Lexeme lexeme) {
            segmentUnknown.add(lexeme.span());
            unread.add(lexeme.span());
        }

        private void known(Lexeme lexeme) {
            Term term = lexeme.form().orElseThrow().term();
            if (term.kind().isOfTheTrade()) {
                tradeWords++;
                segmentKnown = segmentKnown || !others;
            }
            if (term.kind().isAction()) {
                action(lexeme, term);
                return;
            }
            switch (term.kind()) {
                case POSITION -> position(lexeme);
                case LINE -> line(lexeme);
                case TARGET -> aimAt(lexeme, target(term));
                case KIND -> kind(lexeme);
                case CONTACT -> contact(lexeme);
                case MEASURE -> measure(lexeme);
                case SIDE -> side(lexeme);
                case DET -> {
                    det = term.id();
                    owner = owner(lexeme);
                }
                case LINK -> link(lexeme, term);
                case LIGHT -> {
                    light = true;
                    lightWord = Optional.of(lexeme);
                    bareReturn = lexeme.folded().startsWith("return") ? Optional.of(lexeme) : Optional.empty();
                }
                default -> manner(lexeme);
            }
            othersBegan = othersBegan && term.kind() == TermKind.LINK;
        }

        // ---- small words

        private void link(Lexeme lexeme, Term term) {
            switch (term.id()) {
                case "and" -> {
                    endSegment();
                    link = "and";
                }
                case "as" -> {
                    others = true;
                    othersBegan = true;
                }
                case "or" -> leaveOpen();
                case "open" -> open = true;
                case "not" -> {
                    negated = true;
                    notWord = Optional.of(lexeme);
                }
                case "from" -> {
                    link = "from";
                    spokenOf = false;
                }
                case "with" -> {
                    hangKinds();
                    link = "with";
                    spokenOf = false;
                }
                default -> link = link.equals("begins") || link.equals("and") ? link : term.id();
            }
            det = "";
        }

        /** A choice: what comes behind it is not read, and where the blade goes is no longer said. */
        private void leaveOpen() {
            current.ifPresent(draft -> draft.aim = Aim.UNSTATED);
            others = true;
            open = true;
        }

        /** "Parry four": a number behind what takes a position is one. */
        private Optional<Position> numbered(Lexeme lexeme) {
            boolean takes = link.equals("past")
                    && current.filter(draft -> draft.isHead("parry", "position", "beat", "press", "engage")
                                    && draft.position.isEmpty())
                            .isPresent();
            boolean circles = kinds.contains("circular");
            if ((!takes && !circles) || countsSteps()) {
                return Optional.empty();
            }
            return switch (lexeme.folded()) {
                case "three", "3" -> Optional.of(Position.TIERCE);
                case "four", "4" -> Optional.of(Position.QUARTE);
                case "five", "5" -> Optional.of(Position.QUINTE);
                case "6" -> Optional.of(Position.SIXTE);
                case "7" -> Optional.of(Position.SEPTIME);
                case "8" -> Optional.of(Position.OCTAVE);
                default -> Optional.empty();
            };
        }

        private void manner(Lexeme lexeme) {
            Optional<Position> position = numbered(lexeme);
            if (position.isPresent()) {
                tradeWords++;
                place(position.get(), lexeme);
                return;
            }
            switch (lexeme.id()) {
                case "number" -> number(lexeme);
                case "step" -> stepWord(lexeme);
                case "you" -> others = others && !(othersBegan && OWN.contains(lexeme.folded()));
                default -> {}
            }
        }

        private static final Set<String> DENYING = Set.of("do", "don");

        private static final Set<String> OWN = Set.of("you", "vous", "tu");

        private static final Map<String, Integer> NUMBERS = Map.ofEntries(
                Map.entry("one", 1),
                Map.entry("1", 1),
                Map.entry("two", 2),
                Map.entry("2", 2),
                Map.entry("deux", 2),
                Map.entry("due", 2),
                Map.entry("three", 3),
                Map.entry("3", 3),
                Map.entry("trois", 3),
                Map.entry("tre", 3),
                Map.entry("four", 4),
                Map.entry("4", 4),
                Map.entry("five", 5),
                Map.entry("5", 5));

        /** Whether the next word is a step, so that a number before it is how many. */
        private boolean countsSteps() {
            return next.flatMap(Lexeme::form)
                    .map(Form::term)
                    .filter(term ->
                            term.kind() == TermKind.FOOTWORK || term.id().equals("step"))
                    .isPresent();
        }

        /** A number counts the steps behind it, or is not read. */
        private void number(Lexeme lexeme) {
            Integer many = NUMBERS.get(lexeme.folded());
            if (many == null || !countsSteps()) {
                unknown(lexeme);
                return;
            }
            times = many;
            number = Optional.of(lexeme);
        }

        /** "Retreat two steps": how many of the step before it. */
        private void stepWord(Lexeme lexeme) {
            Optional<Draft> step = current.filter(draft -> link.equals("past") && isStep(draft.head));
            if (step.isEmpty()) {
                unknown(lexeme);
                return;
            }
            step.get().times = number.isPresent() ? times : 1;
            step.get().reach(lexeme.span());
            number = Optional.empty();
            times = 1;
        }

        private static boolean isStep(Term term) {
            return STEPS.contains(term.id());
        }

        private static final Set<String> STEPS =
                Set.of("advance", "retreat", "jump-forward", "jump-back", "cross-forward", "cross-back");

        private void side(Lexeme lexeme) {
            boolean atStart = link.equals("begins") || link.equals("comma") || link.equals("and");
            othersBegan = false;
            boolean made = light && (link.equals("begins") || link.equals("and"));
            if (made && !lexeme.id().equals("both")) {
                caused = true;
                lightWord = Optional.empty();
                return;
            }
            if (!atStart || lexeme.id().equals("partner")) {
                return;
            }
            segmentSide = Optional.of(lexeme.span());
            Optional<Side> named = switch (lexeme.id()) {
                case "leader" -> Optional.of(Side.LEADER);
                case "follower" -> Optional.of(Side.FOLLOWER);
                default -> Optional.empty();
            };
            if (current.isPresent() && !named.equals(subject)) {
                shared = Optional.of(current.get().head);
                current = Optional.empty();
            }
            subject = named;
        }

        // ---- qualities

        private void position(Lexeme lexeme) {
            boolean skipped = caused || others || link.equals("from") || negated || (spokenOf && link.equals("of"));
            if (skipped) {
                link = link.equals("from") ? "past" : link;
                negated = false;
                notWord = Optional.empty();
                return;
            }
            place(Position.of(lexeme.id()), lexeme);
        }

        private void place(Position named, Lexeme lexeme) {
            if (still && current.isPresent()) {
                unknown(lexeme);
                return;
            }
            if (current.isPresent() && takesPosition(current.get())) {
                noteSecond(current.get(), named, lexeme);
                current.get().place(named);
                current.get().reach(lexeme.span());
            } else {
                begin(shared.orElse(new Term(TermKind.BLADE, "position")), lexeme)
                        .place(named);
            }
            shared = Optional.empty();
            hangKinds();
            det = "";
        }

        /** "Parry quarte sixte": one position too many, and no word of which is meant. */
        private void noteSecond(Draft draft, Position named, Lexeme lexeme) {
            boolean bare = link.equals("past") && draft.isHead("parry", "position") && draft.engaged.isEmpty();
            draft.position
                    .filter(first -> bare && first != named)
                    .ifPresent(first -> readings.add(new TwoReadings(lexeme.span(), first.word(), named.word())));
        }

        private boolean takesPosition(Draft draft) {
            boolean another = draft.position.isPresent() && draft.engaged.isEmpty();
            boolean settled = another && (link.equals("and") || link.equals("comma"));
            return !settled && !draft.isHead("receive", "salute", "mask-on", "mask-off", "advance", "retreat");
        }

        private void line(Lexeme lexeme) {
            String[] parts = lexeme.id().split("-");
            Optional<Height> height = Optional.empty();
            Optional<Width> width = Optional.empty();
            for (String part : parts) {
                switch (part) {
                    case "high" -> height = Optional.of(Height.HIGH);
                    case "low" -> height = Optional.of(Height.LOW);
                    case "inside" -> width = Optional.of(Width.INSIDE);
                    default -> width = Optional.of(Width.OUTSIDE);
                }
            }
            aimAt(lexeme, new Aim(height, width, Optional.empty()));
        }

        private static Aim target(Term term) {
            return new Aim(Optional.empty(), Optional.empty(), Optional.of(Target.of(term.id())));
        }

        private void aimAt(Lexeme lexeme, Aim more) {
            if (caused || others || spokenOf || negated || link.equals("from")) {
                notWord = Optional.empty();
                link = link.equals("from") ? "past" : link;
                return;
            }
            boolean fresh = current.isEmpty() || link.equals("and") || (link.equals("comma") && !aims(current.get()));
            if (fresh) {
                aim = aim.completedBy(more);
                loose = Optional.of(lexeme);
            } else {
                noteContradiction(current.get().aim, more, lexeme);
                current.get().aim = current.get().aim.completedBy(more);
                current.get().reach(lexeme.span());
            }
        }

        /** "Thrust high low": one of the two is meant. */
        private void noteContradiction(Aim aim, Aim more, Lexeme lexeme) {
            boolean heights = aim.height().isPresent()
                    && more.height().isPresent()
                    && !aim.height().equals(more.height());
            boolean widths = aim.width().isPresent()
                    && more.width().isPresent()
                    && !aim.width().equals(more.width());
            if (heights || widths) {
                readings.add(new TwoReadings(lexeme.span(), "to the " + aim, "to the " + more));
            }
        }

        private static boolean aims(Draft draft) {
            return draft.head.is(TermKind.ARM) || draft.isHead("lunge", "glide", "bind", "croise", "invite", "fleche");
        }

        private void kind(Lexeme lexeme) {
            if (caused || others) {
                return;
            }
            if (spokenOf
                    && !link.equals("with")
                    && !lexeme.id().equals("in-the-lunge")
                    && !lexeme.id().equals("on-the-lunge")) {
                return;
            }
            kinds.add(lexeme.id());
            loose = loose.or(() -> Optional.of(lexeme));
            if (current.isPresent()) {
                current.get().reach(lexeme.span());
            }
        }

        private void contact(Lexeme lexeme) {
            if (caused || others) {
                return;
            }
            boolean stands = current.filter(this::isStance).isPresent();
            if (lexeme.id().equals("engagement-of") && !stands) {
                begin(new Term(TermKind.BLADE, "engage"), lexeme);
                return;
            }
            boolean engaged = !lexeme.id().equals("apart") && !negated;
            negated = false;
            notWord = Optional.empty();
            Draft draft =
                    current.filter(this::isStance).orElseGet(() -> begin(new Term(TermKind.CONTACT, "state"), lexeme));
            draft.engaged = Optional.of(engaged);
            draft.reach(lexeme.span());
        }

        private boolean isStance(Draft draft) {
            return draft.isHead("on-guard", "state", "position", "hold", "wait")
                    || draft.head.id().startsWith("recover");
        }

        private void measure(Lexeme lexeme) {
            if (caused || others) {
                return;
            }
            Draft draft = current.filter(one -> one.head.kind() != TermKind.ARM)
                    .orElseGet(() -> begin(new Term(TermKind.CONTACT, "state"), lexeme));
            draft.measure = Optional.of(Measure.named(lexeme.id()));
            draft.reach(lexeme.span());
            spokenOf = false;
        }

        // ---- actions

        private void action(Lexeme lexeme, Term term) {
            if (caused || (others && !isOwn(lexeme))) {
                othersBegan = false;
                return;
            }
            othersBegan = false;
            if (negated) {
                negated = false;
                notWord = Optional.empty();
                lightWord = Optional.empty();
                // What a sentence denies from its beginning, it denies to its end.
                denied = denied.or(() -> current.isEmpty() ? Optional.of(lexeme) : Optional.empty());
                caused = caused || current.isEmpty();
                others = true;
                return;
            }
            if (isSpokenOf(lexeme, term)) {
                spokenOf = true;
                det = "";
                return;
            }
            others = false;
            spokenOf = false;
            lightWord = Optional.empty();
            compose(lexeme, term);
            still = term.id().equals("hold") && DENYING.contains(lexeme.folded());
            det = "";
            light = false;
            times = 1;
            link = "past";
        }

        /** "While stepping back", "as you lunge", and an order behind somebody else's doing. */
        private boolean isOwn(Lexeme lexeme) {
            boolean gerund = othersBegan && lexeme.has(Form.Inflection.GERUND);
            boolean order = link.equals("and") && lexeme.has(Form.Inflection.LISTED) && !othersBegan;
            return gerund || order;
        }

        private boolean isSpokenOf(Lexeme lexeme, Term term) {
            if (lexeme.has(Form.Inflection.GERUND)) {
                return false;
            }
            if (link.equals("from")) {
                return true;
            }
            if (term.is(TermKind.COURTESY)) {
                return false;
            }
            boolean carriedByYield = term.id().equals("parry")
                    && link.equals("with")
                    && current.filter(draft -> draft.isHead("yield")).isPresent();
            if (carriedByYield) {
                return false;
            }
            boolean pointedAt = det.equals("the") || det.equals("other") || det.equals("own");
            boolean ownMeans = link.equals("with") && !det.equals("other");
            boolean carried =
                    light || current.filter(draft -> carries(draft, term)).isPresent();
            return pointedAt && !ownMeans && !carried;
        }

        /** "Take the parry of quarte", "answer with the parry of quarte", "cut the riposte". */
        private boolean carries(Draft draft, Term term) {
            boolean bare = draft.isHead("position") && draft.position.isEmpty();
            boolean answers = draft.isHead("answer") && link.equals("with");
            boolean named = draft.isHead("cut", "thrust", "disengage", "feint") && isRole(term) && link.equals("past");
            return bare || answers || named;
        }

        private void compose(Lexeme lexeme, Term term) {
            Optional<Draft> merged = current.filter(draft -> completes(draft, term, lexeme));
            if (merged.isPresent()) {
                merged.get().reach(lexeme.span());
                return;
            }
            begin(term, lexeme);
        }

        /** Whether the term only completes the clause before it; then it has been added to it. */
        private boolean completes(Draft draft, Term term, Lexeme lexeme) {
            boolean close = link.equals("with") || link.equals("of") || link.equals("past") || link.equals("to");
            boolean stroke = term.is(TermKind.ARM) || term.is(TermKind.BLADE, "glide");
            boolean untold = draft.isRole() && draft.path.isEmpty() && !draft.aim.isStated();
            boolean apposed = link.equals("comma") && (det.equals("a") || lexeme.has(Form.Inflection.GERUND) || untold);
            if (draft.head.equals(term) && close && term.is(TermKind.FOOTWORK)) {
                return true;
            }
            if (draft.isHead("feint") && stroke && close && !term.id().equals("feint")) {
                return turnInto(draft, term, true);
            }
            if (draft.isHead("extend") && stroke && term.id().equals("extend") && !link.equals("and")) {
                return true;
            }
            if (draft.isHead("extend") && term.id().equals("feint") && close) {
                return turnInto(draft, term, true);
            }
            if (draft.isRole() && term.id().equals("extend") && (close || apposed)) {
                return true;
            }
            if (draft.isRole() && stroke && (close || apposed) && !term.id().equals("feint") && draft.path.isEmpty()) {
                draft.path = Optional.of(term);
                return true;
            }
            if (draft.isRole() && term.id().equals("feint") && close) {
                draft.feint = true;
                return true;
            }
            if (draft.isHead("answer") && (term.is(TermKind.BLADE) || term.is(TermKind.ARM))) {
                return turnInto(draft, term, false);
            }
            if (draft.isHead("yield") && term.id().equals("parry") && !link.equals("and")) {
                return turnInto(draft, term, false);
            }
            if (draft.isHead("deceive") && stroke && (close || apposed)) {
                return turnInto(draft, term, false);
            }
            if (stroke && draft.head.is(TermKind.ARM) && link.equals("past") && isRole(term)) {
                draft.path = Optional.of(draft.head);
                draft.head = term;
                return true;
            }
            if (draft.isHead("position") && draft.position.isEmpty() && !link.equals("and")) {
                return turnInto(draft, term, false);
            }
            if (draft.isHead("parry") && term.id().equals("beat") && close) {
                return true;
            }
            boolean stance =
                    draft.isHead("on-guard", "hold", "wait") || draft.head.id().startsWith("recover");
            if (stance && term.id().equals("engage") && link.equals("comma") && lexeme.has(Form.Inflection.LISTED)) {
                draft.engaged = Optional.of(true);
                return true;
            }
            if (term.id().equals("on-guard")) {
                return draft.head.id().startsWith("recover")
                        || (draft.isHead("on-guard", "hold", "wait") && !link.equals("and"));
            }
            return false;
        }

        private boolean turnInto(Draft draft, Term term, boolean feint) {
            boolean answering = draft.isHead("answer");
            draft.feint = draft.feint || feint;
            if (answering && term.is(TermKind.ARM) && !isRole(term)) {
                draft.path = Optional.of(term);
                draft.head = new Term(TermKind.ARM, "riposte");
            } else {
                draft.head = term;
            }
            countIn(draft);
            draft.kinds.addAll(kinds);
            kinds.clear();
            return true;
        }

        private static boolean isRole(Term term) {
            return new Draft(term, Clause.Join.BEGINS, Optional.empty(), Span.at(0)).isRole();
        }

        /** "The follower's mask": whose it is. */
        private static Optional<Side> owner(Lexeme lexeme) {
            return switch (lexeme.folded()) {
                case "leader" -> Optional.of(Side.LEADER);
                case "follower" -> Optional.of(Side.FOLLOWER);
                default -> Optional.empty();
            };
        }

        private Draft begin(Term term, Lexeme lexeme) {
            lightWord = Optional.empty();
            Clause.Join join = switch (link) {
                case "begins" -> Clause.Join.BEGINS;
                case "and" -> Clause.Join.AND;
                case "comma" -> Clause.Join.COMMA;
                default -> Clause.Join.WITH;
            };
            Optional<Side> doer = term.id().startsWith("mask") ? owner.or(() -> subject) : subject;
            owner = Optional.empty();
            Draft draft = new Draft(term, join, doer, lexeme.span());
            loose.ifPresent(before -> draft.reach(before.span()));
            draft.kinds.addAll(kinds);
            draft.aim = aim;
            countIn(draft);
            kinds.clear();
            aim = Aim.UNSTATED;
            loose = Optional.empty();
            drafts.add(draft);
            current = Optional.of(draft);
            link = "past";
            return draft;
        }

        private void countIn(Draft draft) {
            draft.times = times;
            if (isStep(draft.head)) {
                number = Optional.empty();
            }
        }

        // ---- doubts

        /** What an unread word leaves open of the action beside it. */
        private void doubt(Span word) {
            List<Draft> own = drafts.subList(segmentBegan, drafts.size());
            Optional<Draft> before = own.stream()
                    .filter(draft -> draft.span.start() <= word.start())
                    .reduce((first, last) -> last);
            if (before.isPresent()) {
                before.get().doubts.add(behind(before.get().head));
            } else if (!own.isEmpty()) {
                boolean atSubject =
                        segmentSide.filter(side -> word.start() < side.start()).isPresent();
                own.get(0).doubts.add(atSubject ? Doubt.WHO : Doubt.DONE);
            } else {
                current.ifPresent(draft -> draft.doubts.add(behind(draft.head)));
            }
        }

        private static Doubt behind(Term head) {
            if (head.id().startsWith("mask")) {
                return Doubt.MASK;
            }
            return isStep(head) ? Doubt.STEPS : Doubt.MANNER;
        }

        // ---- ends

        private void hangKinds() {
            if (current.isPresent()) {
                current.get().kinds.addAll(kinds);
                kinds.clear();
            }
        }

        private void endSegment() {
            hangKinds();
            if (current.isPresent() && aim.isStated()) {
                current.get().aim = current.get().aim.completedBy(aim);
                aim = Aim.UNSTATED;
            }
            number.ifPresent(this::unknown);
            lightWord.ifPresent(this::unknown);
            notWord.ifPresent(this::unknown);
            number = Optional.empty();
            lightWord = Optional.empty();
            notWord = Optional.empty();
            segmentUnknown.sort(Comparator.comparingInt(Span::start));
            segmentUnknown.forEach(this::doubt);
            boolean nothing = drafts.size() == segmentBegan && (!segmentKnown || current.isEmpty());
            if (!segmentUnknown.isEmpty() && nothing) {
                Span span = segmentUnknown.get(0).to(segmentUnknown.get(segmentUnknown.size() - 1));
                Draft draft = new Draft(new Term(TermKind.MANNER, "unread"), Clause.Join.COMMA, subject, span);
                drafts.add(draft);
            }
            segmentBegan = drafts.size();
            segmentSide = Optional.empty();
            segmentUnknown.clear();
            segmentKnown = false;
            loose = current.isPresent() ? Optional.empty() : loose;
            det = "";
            spokenOf = false;
            negated = false;
            times = 1;
        }

        void endSentence() {
            endSegment();
            if (current.isEmpty() && (aim.isStated() || !kinds.isEmpty()) && loose.isPresent()) {
                Lexeme left = loose.get();
                begin(new Term(TermKind.MANNER, "unread"), left);
                unread.add(left.span());
            }
            denied.filter(word -> drafts.size() == sentenceBegan)
                    .map(Lexeme::span)
                    .map(span -> new Draft(new Term(TermKind.MANNER, "unread"), Clause.Join.BEGINS, subject, span))
                    .ifPresent(drafts::add);
            denied = Optional.empty();
            still = false;
            if (open) {
                drafts.subList(sentenceBegan, drafts.size()).forEach(draft -> draft.doubts.add(Doubt.CHOICE));
            }
            open = false;
            caused = false;
            sentenceBegan = drafts.size();
            segmentBegan = drafts.size();
            boolean said = current.isPresent();
            bareReturn
                    .filter(word -> !said)
                    .ifPresent(word -> readings.add(new TwoReadings(word.span(), "return to guard", "riposte")));
            bareReturn = Optional.empty();
            current = Optional.empty();
            subject = Optional.empty();
            shared = Optional.empty();
            kinds.clear();
            aim = Aim.UNSTATED;
            loose = Optional.empty();
            link = "begins";
            light = false;
            others = false;
            othersBegan = false;
        }

        @Override
        public String toString() {
            return text;
        }
    }
}
