package org.drillwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.lexicon.Lexicon;
import org.drillwright.lexicon.Token;
import org.drillwright.meaning.Meant;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Telling;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/** Makes clauses of the pieces of sentences: who does it, what completes what, and what gaps leave in doubt. */
final class Clauses {

    private static final Action RECEIVED = new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED);

    private static final Set<String> DETERMINING = Set.of("DET", "POSS");

    private final LanguageTables tongue;
    private final boolean hadBefore;
    private final List<Clause> clauses = new ArrayList<>();
    private final List<Span> open = new ArrayList<>();
    private final List<Span> unread = new ArrayList<>();
    private boolean said;
    private boolean moved;

    /** Whether an action was forbidden, and nothing told that is done instead. */
    private boolean forbidden;

    /** Whether something was ordered before that plays nothing: 'keep the hand quiet; don't push back'. */
    private boolean ordered;

    private Span heard = Span.at(0);

    private List<Token> sentence = List.of();
    private int begins;

    /** Where the clauses of the sentence before begin. */
    private int earlier;

    /** Who acts until somebody else is named: empty for the one whose turn it is. */
    private Optional<Side> subject = Optional.empty();

    /** Whether attackers and defenders were named: each is a part in the phrase that either side may have. */
    private final Set<String> parts = new HashSet<>();

    /** Whether the one whose turn it is was told of last as 'the pupil' or 'the fencer', so that 'he' is the same. */
    private boolean pupilActs;

    /** How many clauses stood before what was last told beside them: what another does, when, or why. */
    private int besides;

    private boolean calledUpon;
    private boolean lunged;

    /** Where it stands that something is let come that may yet be met or gone from; -1 if nothing is. */
    private int coming = -1;

    /** Whether several were named, whose verbs look like orders: 'leaders beat and lunge'. */
    private boolean many;

    private boolean others;

    /** Whether what stands between that and here tells only how the other does it: 'he steps in with his hand high, showing …'. */
    private boolean besideOthers;

    /** Whether the other told of last is the partner by name, not a mere 'he'. */
    private boolean partnerActs;

    /** What 'he' does, by whom the one may be meant whose turn it is, where nobody else acts. */
    private final List<Told> his = new ArrayList<>();

    /** What the partner does, by whom that one may be meant where the text speaks to nobody. */
    private final List<Told> partners = new ArrayList<>();

    private final List<List<Token>> sentences = new ArrayList<>();

    /** How the one is told of whose turn it is. */
    private Telling telling = Telling.UNSAID;

    /** Whether it tells of somebody else, be it that nothing of what he does is understood. */
    private boolean tellsOfAnother;

    private boolean anotherActs;

    /** What 'he' does of which not every word is read, so that he may be the one whose turn it is. */
    private final List<Span> hisUnread = new ArrayList<>();

    private Clause.Join join = Clause.Join.BEGINS;
    private boolean explains;

    /** Whether a colon stands before what comes now. */
    private boolean headed;

    /** Whether what comes now is done once more by the same words: 'parry three times'. */
    private boolean repeated;

    /** Whether the first half of the stroke told last was told, too, so that its end is to come. */
    private boolean halfTold;

    /** Clauses of the stretch between two signs, and what of it was not read. */
    private int stretch;

    /** Where the clauses of the piece before begin. */
    private int latest;

    private final List<SentencePart> gaps = new ArrayList<>();
    private final List<SentencePart> beside = new ArrayList<>();
    private boolean choice;

    /** Whether what comes now is done instead of what was told before, so that it is no action of its own. */
    private boolean alternative;

    /** Whether it was said what is not to be done, so that what stands behind it in the sentence may be part of that. */
    private boolean denied;

    /** Whether a comma stands behind that: 'do not wait, lunge'. */
    private boolean contrasted;

    /** Whether something is told as done when another thing begins. */
    private boolean tellsOfEarlier;

    /**
     * @param tongue the language that the sentences are of
     * @param hadBefore that what is told as done when another thing begins was done on a count before: 'having parried,
     *     riposte'
     */
    Clauses(LanguageTables tongue, boolean hadBefore) {
        this.tongue = tongue;
        this.hadBefore = hadBefore;
    }

    void sentence(List<Token> tokens, List<SentencePart> pieces) {
        sentence = tokens;
        sentences.add(tokens);
        Span whole = tokens.get(0).span().to(tokens.get(tokens.size() - 1).span());
        heard = said ? heard.to(whole) : whole;
        earlier = begins;
        begins = clauses.size();
        stretch = clauses.size();
        subject = Optional.empty();
        calledUpon = false;
        lunged = false;
        many = false;
        others = false;
        besideOthers = false;
        choice = false;
        alternative = false;
        denied = false;
        contrasted = false;
        headed = false;
        halfTold = false;
        join = Clause.Join.BEGINS;
        for (SentencePart piece : inOrderDone(pieces)) {
            openWords(piece);
            Telling told = PersonTold.in(tongue, sentence, piece);
            telling = told.compareTo(telling) < 0 ? told : telling;
            tellsOfAnother = tellsOfAnother || PersonTold.isAnother(tongue, sentence, piece);
            take(piece);
        }
        endStretch();
    }

    /** 'Before lunging, extend the arm': what is done later may be told ahead of what is done first. */
    private static List<SentencePart> inOrderDone(List<SentencePart> pieces) {
        int ahead = 0;
        while (ahead < pieces.size() && !pieces.get(ahead).acts()) {
            ahead++;
        }
        if (ahead == pieces.size() || !pieces.get(ahead).isLater()) {
            return pieces;
        }
        List<SentencePart> order = new ArrayList<>(pieces);
        SentencePart later = order.remove(ahead);
        int first = ahead;
        while (first < order.size() && !order.get(first).acts()) {
            first++;
        }
        order.add(Math.min(first + 1, order.size()), later);
        return order;
    }

    /** 'You', 'your'. */
    private boolean speaksToSomebody() {
        return sentences.stream()
                .anyMatch(tokens -> IntStream.range(0, tokens.size())
                        .boxed()
                        .flatMap(at -> tongue.lexicon().at(tokens, at).stream().filter(match -> match.end() == at + 1))
                        .map(Lexicon.Match::entry)
                        .anyMatch(entry -> entry.features().is("who", "self")
                                && !entry.features().has("st")));
    }

    /** A word that nobody looks at any more. */
    void beyond(Token token) {
        unread.add(token.span());
        clauses.add(new Clause(new Action.Unread(token.folded()), Optional.empty(), token.span(), Clause.Join.WITH));
    }

    /** @param at how many clauses stand before it */
    private record Told(Meant meant, Span span, int at) {}

    /** 'The masks being put on, they engage': where they salute or mask, what they do is done by both. */
    private void thoseWhoSalute() {
        boolean salutedAlready = clauses.stream().anyMatch(clause -> clause.action() instanceof Action.Salute);
        boolean courteous = clauses.stream().anyMatch(clause -> isCourtesy(clause.action()))
                || his.stream().anyMatch(told -> told.meant() instanceof Meant.Does does && isCourtesy(does.action()));
        boolean twice = salutedAlready
                && his.stream()
                        .anyMatch(told ->
                                told.meant() instanceof Meant.Does does && does.action() instanceof Action.Salute);
        if (anotherActs || !courteous || twice) {
            return;
        }
        subject = Optional.empty();
        begins = clauses.size();
        for (int one = his.size() - 1; one >= 0; one--) {
            Told told = his.get(one);
            int end = clauses.size();
            join = told.at() == 0 ? Clause.Join.BEGINS : Clause.Join.AND;
            add(told.meant(), told.span());
            List<Clause> added = List.copyOf(clauses.subList(end, clauses.size()));
            clauses.subList(end, clauses.size()).clear();
            clauses.addAll(told.at(), added);
        }
    }

    private static boolean isCourtesy(Action action) {
        return action instanceof Action.Salute || action instanceof Action.Mask;
    }

    /** Whether something is told as done when another begins, so that it may have been done on a count before. */
    boolean tellsOfEarlier() {
        return tellsOfEarlier;
    }

    /** Whether 'he' does something in it and nobody else is named, so that it may be told of the one whose turn it is. */
    boolean mayTellOfHim() {
        return !his.isEmpty() && hisUnread.isEmpty() && !anotherActs;
    }

    /** Whether he or the partner, of whom alone it tells, may be the one whose turn it is; asked before {@link #utterance()}. */
    boolean mayTellOfOneself() {
        return (clauses.isEmpty() && mayTellOfHim()) || mayTellOfPartner();
    }

    private boolean mayTellOfPartner() {
        return tellsOfPartnerAlone() && !speaksToSomebody();
    }

    /** Whether it tells 'you' what your partner does, and nothing else; asked before {@link #utterance()}. */
    boolean tellsOfYourPartner() {
        return tellsOfPartnerAlone() && speaksToSomebody();
    }

    private boolean tellsOfPartnerAlone() {
        return clauses.isEmpty() && his.isEmpty() && hisUnread.isEmpty() && !partners.isEmpty();
    }

    /** What is said if the partner of whom it tells to 'you' is the one whose turn it is. */
    Utterance ofYourPartner() {
        if (tellsOfYourPartner()) {
            acts(partners);
        }
        return utterance();
    }

    /** That the one of whom alone the text tells is the one whose turn it is: a handbook tells of the pupil so. */
    private void acts(List<Told> tale) {
        begins = 0;
        join = Clause.Join.BEGINS;
        for (Told told : tale) {
            subject = Optional.empty();
            add(told.meant(), told.span());
            join = Clause.Join.AND;
        }
    }

    /**
     * What is said if the one of whom alone the text tells is the one whose turn it is, be it one action only: 'he lunges
     * to the chest'; elsewhere as {@link #utterance()}.
     */
    Utterance ofOneself() {
        if (mayTellOfPartner()) {
            acts(partners);
        } else if (clauses.isEmpty() && mayTellOfHim()) {
            acts(his);
        }
        return utterance();
    }

    Utterance utterance() {
        if (!clauses.isEmpty()) {
            thoseWhoSalute();
        } else if (his.size() > 1 && mayTellOfHim()) {
            acts(his);
        }
        boolean ofAnother = clauses.isEmpty() && tellsOfAnother;
        if (clauses.isEmpty() && !hisUnread.isEmpty()) {
            unread.addAll(hisUnread);
            hisUnread.forEach(span ->
                    clauses.add(new Clause(new Action.Unread("words"), Optional.empty(), span, Clause.Join.BEGINS)));
        }
        if (clauses.isEmpty() && said) {
            clauses.add(new Clause(
                    new Action.Aside(moved ? Action.Trifle.MOVED : Action.Trifle.OTHER),
                    Optional.empty(),
                    heard,
                    Clause.Join.BEGINS,
                    forbidden ? Set.of(Doubt.DONE) : Set.of()));
        }
        if (parts.size() > 1) {
            begins = 0;
            for (int at = 0; at < clauses.size(); at++) {
                if (clauses.get(at).subject().isEmpty()) {
                    doubt(at, Doubt.WHO);
                }
            }
        }
        return new Utterance(
                clauses,
                inOrder(unread),
                inOrder(open),
                List.of(),
                List.of(),
                said ? 1 : 0,
                ofAnother ? Telling.OF_ANOTHER : telling);
    }

    /** Words that were written as one share a place; it counts once. */
    private static List<Span> inOrder(List<Span> spans) {
        return spans.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Span::start))
                .toList();
    }

    private Span span(SentencePart piece) {
        return sentence.get(piece.from()).span().to(sentence.get(piece.to() - 1).span());
    }

    private void take(SentencePart piece) {
        switch (piece.kind()) {
            case COMMA, COLON -> {
                endStretch();
                alternative = false;
                explains = piece.kind() == SentencePart.Kind.COLON;
                headed = explains;
                denied = denied && !explains;
                contrasted = true;
                join = join == Clause.Join.BEGINS ? join : Clause.Join.COMMA;
            }
            case AND -> {
                endStretch();
                alternative = false;
                denied = denied && !piece.features().has("but");
                contrasted = false;
                join = Clause.Join.AND;
            }
            case OR -> {
                endStretch();
                choice = true;
                open.add(span(piece));
                alternative = clauses.size() > begins;
                doubt(clauses.size() - 1, Doubt.CHOICE);
            }
            case GAP -> {
                gaps.add(piece);
                unread.add(span(piece));
            }
            case COUNT -> said = true;
            case MANNER -> said = true;
            case ABOUT -> about(piece);
            case CLAUSE, FRAGMENT -> clause(piece);
        }
    }

    private void about(SentencePart piece) {
        said = true;
        besides = piece.features().has("lunged") ? besides : clauses.size();
        boolean tells = piece.isOfAnother() && !piece.meant().isEmpty();
        boolean pupils = tells && pupilActs && piece.features().has("pn");
        boolean partners = tells && !mayBeOwn(piece) && subject.isPresent();
        pupilActs = pupilActs && (pupils || !tells);
        if (pupils || partners) {
            subject = pupils ? subject : subject.map(Side::other);
            piece.meant().forEach(meant -> add(meant, span(piece)));
            latest = pupils ? latest : clauses.size();
            return;
        }
        inTheLunge(piece);
        besideOthers = (others || besideOthers) && piece.who().isEmpty();
        others = piece.isOfAnother();
        partnerActs = others && !mayBeOwn(piece);
        anotherActs = anotherActs || partnerActs;
        tellsOfHim(piece);
        if (piece.features().has("top") && piece.features().has("pn")) {
            hisUnread.add(span(piece));
        }
        boolean first = clauses.size() == begins;
        boolean denial = piece.features().has("deny");
        boolean alone = piece.features().is("deny", "finite");
        denied = denied || (first && denial && !alone);
        contrasted = contrasted && !denial;
        forbidden = forbidden || (clauses.isEmpty() && denial && !ordered);
        choice = choice || piece.features().has("cond");
        if (!piece.features().has("cond")) {
            return;
        }
        if (clauses.size() == stretch) {
            for (int at = begins; at < clauses.size(); at++) {
                doubt(at, Doubt.CHOICE);
            }
        }
        for (int at = stretch; at < clauses.size(); at++) {
            doubt(at, Doubt.CHOICE);
        }
    }

    /** Whether who acts may be the one whose turn it is: 'he', or 'his partner' where a handbook tells of both. */
    private static boolean mayBeOwn(SentencePart piece) {
        return piece.features().has("pn") || piece.features().has("told");
    }

    private void tellsOfHim(SentencePart piece) {
        for (Meant meant : piece.meant()) {
            (partnerActs ? partners : his).add(new Told(meant, span(piece), clauses.size()));
        }
    }

    /** Words that leave something open, unless they are said about something else. */
    private void openWords(SentencePart piece) {
        boolean aboutOthers =
                piece.kind() == SentencePart.Kind.ABOUT && !piece.features().has("cond");
        int at = aboutOthers ? piece.to() : piece.from();
        while (at < piece.to()) {
            Optional<Lexicon.Match> match = tongue.leavingOpen(sentence, at)
                    .filter(found -> piece.kind() != SentencePart.Kind.CLAUSE
                            || piece.features().has("open")
                            || !found.entry().category().equals("WILL"));
            if (match.isPresent()) {
                open.add(sentence.get(at)
                        .span()
                        .to(sentence.get(match.get().end() - 1).span()));
                if (piece.kind() == SentencePart.Kind.ABOUT) {
                    return;
                }
            }
            at = match.map(Lexicon.Match::end).orElse(tongue.behindPretence(sentence, at));
        }
    }

    /** "While still on the lunge, parry": what is parried in this sentence is parried there. */
    private void inTheLunge(SentencePart piece) {
        if (piece.features().has("lunged")) {
            lunged = true;
            for (int at = begins; at < clauses.size(); at++) {
                clauses.set(
                        at,
                        clauses.get(at).with(Gloss.inTheLunge(clauses.get(at).action())));
            }
        }
    }

    private void clause(SentencePart piece) {
        said = true;
        moved |= piece.moves() && !piece.isOfAnother() && !denied;
        if (piece.features().has("lunged")) {
            lunged = true;
        }
        forbidden = forbidden && denied && !(contrasted && piece.isForm("base") && piece.acts());
        if (alternative) {
            if (clauses.size() == begins) {
                unread.add(span(piece));
            }
            return;
        }
        ordered = ordered || piece.isForm("base");
        Optional<Side> named = piece.who().flatMap(Clauses::side);
        piece.who().filter(who -> who.equals("att") || who.equals("def")).ifPresent(parts::add);
        if (piece.features().has("voc")) {
            subject = named;
            calledUpon = true;
            others = piece.isOfAnother();
            anotherActs = anotherActs || others;
            if (piece.features().has("same")) {
                repeat();
            }
            return;
        }
        if (piece.who().isPresent()) {
            subject = named;
            others = false;
            many = piece.isForm("base");
        } else if (piece.isForm("base") && !calledUpon && !(many && join == Clause.Join.AND)) {
            subject = Optional.empty();
            others = false;
        }
        boolean goesOn = others && piece.isForm("3");
        boolean does = (others || besideOthers) && piece.isForm("ing") && !his.isEmpty();
        if ((goesOn || does) && !piece.features().has("named")) {
            tellsOfHim(piece);
            return;
        }
        others = false;
        pupilActs = pupilActs || piece.features().has("named");
        boolean apposed = piece.isForm("ing") || (piece.isForm("n") && (namesOnly() || namesAgain(piece)));
        explains = explains
                || (apposed && join == Clause.Join.COMMA)
                || piece.features().has("names");
        int first = clauses.size();
        boolean perhapsDenied = denied && !(contrasted && (piece.isForm("base") || piece.isForm("3")));
        if (piece.features().has("open")) {
            choice = true;
        }
        Optional<Meant> before = Optional.empty();
        for (Meant meant : piece.meant()) {
            repeated = before.equals(Optional.of(meant)) && !isPress(meant);
            if (!before.equals(Optional.of(meant)) || !isOfTheFeet(meant)) {
                add(meant, span(piece));
            }
            repeated = false;
            explains = piece.features().has("gloss");
            before = Optional.of(meant);
        }
        if (piece.isForm("having") && !piece.isLater() && latest >= begins && latest < first) {
            List<Clause> earlier = new ArrayList<>(clauses.subList(first, clauses.size()));
            clauses.subList(first, clauses.size()).clear();
            clauses.addAll(latest, earlier);
        }
        if (perhapsDenied) {
            for (int at = first; at < clauses.size(); at++) {
                doubt(at, Doubt.DONE);
            }
        }
        if (!piece.meant().isEmpty()) {
            latest = first;
            beside.add(piece);
            join = Clause.Join.WITH;
            explains = false;
            headed = false;
        }
    }

    /** "Followers, too": what was told of the others just before. */
    private void repeat() {
        int from = begins < clauses.size() ? begins : earlier;
        List<Clause> told = List.copyOf(clauses.subList(from, clauses.size()));
        for (Clause clause : told) {
            clauses.add(new Clause(clause.action(), subject, clause.span(), clause.join(), clause.doubts()));
        }
    }

    /** 'Lean on the blade with a steady pressure': one presses but once, however it is told. */
    private static boolean isPress(Meant meant) {
        return meant instanceof Meant.Does does
                && does.action() instanceof Action.OnBlade onBlade
                && onBlade.contact() == Contact.PRESS;
    }

    /** "Jump in with a balestra" is one jump, "run at her with a flèche" one flèche. */
    private static boolean isOfTheFeet(Meant meant) {
        return meant instanceof Meant.Does does
                && (does.action() instanceof Action.Step || does.action() instanceof Action.Lunge);
    }

    private static Optional<Side> side(String who) {
        return switch (who) {
            case "leader" -> Optional.of(Side.LEADER);
            case "follower" -> Optional.of(Side.FOLLOWER);
            default -> Optional.empty();
        };
    }

    private void add(Meant meant, Span span) {
        if (meant instanceof Meant.Had had) {
            tellsOfEarlier = true;
            if (!hadBefore) {
                add(had.meant(), span);
            }
        } else if (meant instanceof Meant.Lands lands) {
            land(lands, span);
        } else if (meant instanceof Meant.Again again) {
            again(again, span);
        } else if (meant instanceof Meant.Arrives) {
            if (!strikes()) {
                add(new Meant.Does(RECEIVED), span);
            }
        } else if (meant instanceof Meant.Comes) {
            int before = clauses.size();
            add(new Meant.Does(RECEIVED), span);
            coming = clauses.size() > before ? before : coming;
        } else if (meant instanceof Meant.Does does) {
            Optional<Action> one = clauses.size() > begins
                    ? toldTwice(clauses.get(clauses.size() - 1).action(), does.action())
                    : underTitle(does.action());
            if (one.isPresent()) {
                replace(one.get(), span);
                return;
            }
            if (endsBegun(does.action()) || evadesAgain(does.action())) {
                return;
            }
            toldAhead(does.action()).ifPresent(this::takeOut);
            add(changesRoles(does.action()) ? new Action.Aside(Action.Trifle.OTHER) : does.action(), span);
        }
    }

    /** 'Pass beneath, lower the body, and hit': one gets out of the way but once, however it is told. */
    private boolean evadesAgain(Action action) {
        return action instanceof Action.Evade
                && join != Clause.Join.AND
                && clauses.subList(begins, clauses.size()).stream()
                        .anyMatch(told -> told.action() instanceof Action.Evade
                                && told.subject().equals(subject));
    }

    /**
     * Where it stands that one is hit, or gets away, if that is what all of it comes to, told ahead of how it is done: 'it is
     * your turn to be hit, so open the chest and let his thrust land', 'get out of there: recover and withdraw'.
     */
    private Optional<Integer> toldAhead(Action action) {
        boolean away = action instanceof Action.Withdraw;
        if (!away && !action.equals(RECEIVED)) {
            return Optional.empty();
        }
        for (int at = clauses.size() - 1; at >= begins; at--) {
            Action told = clauses.get(at).action();
            if (told.equals(action) && clauses.get(at).subject().equals(subject)) {
                return Optional.of(at);
            }
            if (away && !(told instanceof Action.Recover)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * 'Disengage, lunge, cut flank', 'Thrust high inside and lunge. Hit the chest': where the stroke that was begun
     * arrives, told behind the lunge or the arm that carries it.
     */
    private boolean endsBegun(Action action) {
        if (!(action instanceof Action.Strike end) || !(Gloss.arrives(end) || explains)) {
            return false;
        }
        int last = clauses.size() - 1;
        int at = carriedFrom(end.aim());
        if (!goesOnFrom(at)) {
            return false;
        }
        Action begun = clauses.get(at).action();
        Optional<Action> whole = explains ? Gloss.of(begun, end) : Gloss.arriving(begun, end, at < last);
        if (whole.isPresent()) {
            clauses.set(at, clauses.get(at).with(whole.get()));
            begins = Math.min(begins, at);
            join = Clause.Join.WITH;
        }
        return whole.isPresent();
    }

    /**
     * Whether what comes now may belong to that clause: the same one acts, nothing is left open, and nothing was told between
     * them that may have changed what is done: 'lunge. When he parries, hit the flank' are two strokes.
     */
    private boolean goesOnFrom(int at) {
        return at >= 0 && clauses.get(at).subject().equals(subject) && !choice && besides <= at;
    }

    /** 'Invite. Let the hand drift outwards …': a sentence that is but a name heads the one behind it. */
    private Optional<Action> underTitle(Action action) {
        boolean headed = begins > 0
                && begins == earlier + 1
                && join == Clause.Join.BEGINS
                && clauses.get(earlier).isCertain()
                && goesOnFrom(earlier);
        Optional<Action> one = headed ? Gloss.underTitle(clauses.get(earlier).action(), action) : Optional.empty();
        if (one.isPresent()) {
            begins = earlier;
        }
        return one;
    }

    /** Where the last clause stands that does not carry a stroke to that aim; -1 if all do. */
    private int carriedFrom(Aim aim) {
        int at = clauses.size() - 1;
        while (at >= 0 && Gloss.carries(clauses.get(at).action(), aim)) {
            at--;
        }
        return at;
    }

    /** 'Masks off, salute, change': what is changed behind that are the roles. */
    private boolean changesRoles(Action action) {
        boolean bare = action instanceof Action.OnBlade blade
                && blade.contact() == Contact.CHANGE_ENGAGEMENT
                && blade.position().isEmpty()
                && !blade.aim().isStated();
        return bare
                && !clauses.isEmpty()
                && isCourtesy(clauses.get(clauses.size() - 1).action());
    }

    /** Whether a stroke or a lunge of the one who acts was told. */
    private boolean strikes() {
        return clauses.stream()
                .anyMatch(told -> told.subject().equals(subject)
                        && (told.action() instanceof Action.Strike || told.action() instanceof Action.Lunge));
    }

    /** 'Let the attack come and step back': what is met or gone from does not arrive. */
    private void meets(Action action) {
        boolean open = coming >= 0
                && coming < clauses.size()
                && clauses.get(coming).action().equals(RECEIVED)
                && clauses.get(coming).subject().equals(subject);
        if (!open || !Gloss.meetsWhatComes(action)) {
            return;
        }
        takeOut(coming);
    }

    private void takeOut(int at) {
        clauses.remove(at);
        begins = behind(begins, at);
        earlier = behind(earlier, at);
        stretch = behind(stretch, at);
        latest = behind(latest, at);
        besides = behind(besides, at);
        coming = coming == at ? -1 : behind(coming, at);
    }

    /** Where a place is now that another was taken out before it. */
    private static int behind(int place, int at) {
        return place > at ? place - 1 : place;
    }

    private void add(Action said, Span span) {
        meets(said);
        boolean answersHim = said instanceof Action.Strike counter
                && counter.role() == Role.COUNTER_RIPOSTE
                && (!his.isEmpty() || behindName());
        if (answersHim || (said instanceof Action.Strike answer && answer.role() == Role.RIPOSTE)) {
            parriedWith();
        }
        if (said instanceof Action.OnBlade blade && blade.position().isEmpty()) {
            engagedThere(blade.contact());
        }
        Action action = said instanceof Action.Strike strike ? behindParry(strike) : whileStepping(said);
        Set<Doubt> doubts = choice ? EnumSet.of(Doubt.CHOICE) : EnumSet.noneOf(Doubt.class);
        clauses.add(new Clause(lunged ? Gloss.inTheLunge(action) : action, subject, span, join, doubts));
        join = Clause.Join.WITH;
        lunged = lunged && !(said instanceof Action.Recover) && !(said instanceof Action.Step);
    }

    /** The same once more, elsewhere; a position alone is taken with the hand. */
    private void again(Meant.Again again, Span span) {
        Optional<Action> before = clauses.size() > begins
                ? Optional.of(clauses.get(clauses.size() - 1).action())
                : Optional.empty();
        Optional<Action> whole =
                before.filter(action -> join == Clause.Join.COMMA).flatMap(action -> targeted(action, again));
        if (whole.isPresent()) {
            replace(whole.get(), span);
            return;
        }
        Optional<Action> once = before.flatMap(action -> elsewhere(action, again));
        boolean completes = join == Clause.Join.COMMA
                && before.filter(action -> (action instanceof Action.Parry parry
                                        && parry.position().isEmpty())
                                || (action instanceof Action.OnBlade blade
                                        && blade.position().isEmpty())
                                || isUnaimedExtension(action))
                        .isPresent();
        if (completes && once.isPresent()) {
            replace(once.get(), span);
        } else if (once.isPresent()) {
            add(once.get(), span);
        } else if (again.position().isPresent()) {
            add(new Meant.Does(new Action.Place(again.position().get(), false)), span);
        } else {
            unread.add(span);
            add(new Action.Unread("words"), span);
        }
    }

    /** 'Thrust outside high, to the shoulder': first the line, then the target in it. */
    private static Optional<Action> targeted(Action action, Meant.Again again) {
        return action instanceof Action.Strike strike
                        && again.position().isEmpty()
                        && !strike.feint()
                        && strike.aim().height().isPresent()
                        && strike.aim().width().isPresent()
                        && strike.aim().target().isEmpty()
                        && again.aim().target().isPresent()
                        && strike.aim().agreesWith(again.aim())
                ? Optional.of(strike.aimed(again.aim().completedBy(strike.aim())))
                : Optional.empty();
    }

    /** 'Straighten the arm and put the point in line, towards the chest': where it points is told behind it. */
    private static boolean isUnaimedExtension(Action action) {
        return action instanceof Action.Strike strike
                && strike.role() == Role.EXTENSION
                && !strike.aim().isStated();
    }

    private static Optional<Action> elsewhere(Action action, Meant.Again again) {
        if (again.position().isPresent()) {
            if (action instanceof Action.Parry parry) {
                ParryKind kind = parry.position().isEmpty() ? parry.kind() : ParryKind.UNSTATED;
                return Optional.of(new Action.Parry(again.position(), kind, again.aim(), parry.inTheLunge()));
            }
            return action instanceof Action.OnBlade blade && !blade.aim().isStated()
                    ? Optional.of(new Action.OnBlade(blade.contact(), again.position(), blade.aim()))
                    : Optional.<Action>empty();
        }
        if (action instanceof Action.Strike strike && (strike.aim().isStated() || isUnaimedExtension(strike))) {
            return Optional.of(strike.at(again.aim()));
        }
        return action instanceof Action.Lunge lunge && lunge.aim().isStated()
                ? Optional.of(new Action.Lunge(lunge.depth(), again.aim()))
                : Optional.<Action>empty();
    }

    /** A stroke behind one's own parry, or behind what carries the parried blade away, is the riposte, whatever it is called. */
    private Action behindParry(Action.Strike strike) {
        int at = clauses.size() - 1;
        while (at > begins
                && clauses.get(at).action() instanceof Action.OnBlade blade
                && carries(blade.contact())
                && clauses.get(at - 1).subject().equals(clauses.get(at).subject())) {
            at--;
        }
        boolean parried = at >= 0
                && clauses.get(at).action() instanceof Action.Parry
                && (subject.isEmpty() || clauses.get(at).subject().equals(subject));
        if (!parried || strike.role() != Role.ATTACK || strike.feint() || strike.falseAttack()) {
            return strike;
        }
        Role role = meetsRiposte(clauses.get(at).span()) ? Role.COUNTER_RIPOSTE : Role.RIPOSTE;
        return new Action.Strike(role, strike.path(), strike.aim(), strike.cut(), false, false, strike.opposition());
    }

    /** 'Parry his riposte and hit': what is hit with behind that is the counter-riposte. */
    private boolean meetsRiposte(Span parry) {
        return IntStream.range(1, sentence.size())
                .filter(at -> parry.start() <= sentence.get(at).span().start()
                        && sentence.get(at).span().end() <= parry.end()
                        && DETERMINING.stream().anyMatch(category -> isA(category, at - 1)))
                .boxed()
                .flatMap(at -> tongue.lexicon().at(sentence, at).stream())
                .anyMatch(match -> match.entry().category().equals("ACTN")
                        && match.entry().features().is("role", "riposte"));
    }

    private boolean isA(String category, int at) {
        return tongue.lexicon().at(sentence, at).stream()
                .anyMatch(match ->
                        match.end() == at + 1 && match.entry().category().equals(category));
    }

    /** "Advance, the blade engaged": it stays so. */
    private Action whileStepping(Action said) {
        boolean stepped =
                clauses.size() > begins && clauses.get(clauses.size() - 1).action() instanceof Action.Step;
        return stepped && said instanceof Action.State state && state.measure().isEmpty()
                ? new Action.Answer(Action.Reply.HOLD, state.stance())
                : said;
    }

    /** 'Sixte, then counter-riposte': nothing is told before but the name. */
    private boolean behindName() {
        return clauses.size() > begins
                && sentence.stream()
                        .anyMatch(token -> token.span()
                                .equals(clauses.get(clauses.size() - 1).span()));
    }

    /** "Take octave and riposte", "four, six, then riposte": what is answered from there was parried there. */
    private void parriedWith() {
        int last = clauses.size() - 1;
        if (last < begins || !(clauses.get(last).action() instanceof Action.Place)) {
            return;
        }
        boolean parried =
                clauses.subList(begins, last).stream().anyMatch(told -> told.action() instanceof Action.Parry);
        if (parried) {
            return;
        }
        int at = last;
        while (at >= begins && clauses.get(at).action() instanceof Action.Place place) {
            clauses.set(
                    at,
                    clauses.get(at)
                            .with(new Action.Parry(
                                    Optional.of(place.position()),
                                    ParryKind.UNSTATED,
                                    Aim.UNSTATED,
                                    place.inTheLunge())));
            at--;
        }
    }

    private static boolean carries(Contact contact) {
        return contact == Contact.BIND || contact == Contact.CROISE || contact == Contact.ENVELOP;
    }

    /** "Take four and croisé": what carries the blade away from there has engaged it there. */
    private void engagedThere(Action.Contact contact) {
        int last = clauses.size() - 1;
        if (carries(contact)
                && last >= 0
                && clauses.get(last).action() instanceof Action.Place place
                && !place.inTheLunge()) {
            clauses.set(
                    last,
                    clauses.get(last)
                            .with(new Action.OnBlade(
                                    Action.Contact.ENGAGE, Optional.of(place.position()), Aim.UNSTATED)));
        }
    }

    /** The stroke told last in this sentence, if it is a real one and nothing that may end it was told since. */
    private Optional<Action.Strike> last() {
        boolean mayGoOn = clauses.size() > begins
                && besides < clauses.size()
                && clauses.get(clauses.size() - 1).subject().equals(subject);
        return mayGoOn && clauses.get(clauses.size() - 1).action() instanceof Action.Strike strike
                ? Optional.of(strike).filter(one -> !one.feint())
                : Optional.empty();
    }

    /** 'Thrust at the chest, lunge and hit': a hit of which nothing more is told is that of the stroke told before. */
    private boolean hitsAsTold(Meant.Lands lands) {
        boolean anew = clauses.size() == begins;
        int at = carriedFrom(Aim.UNSTATED);
        boolean carried = at < clauses.size() - 1;
        if (lands.aim().isStated() || at < (anew ? earlier : begins) || !goesOnFrom(at)) {
            return false;
        }
        boolean told = clauses.get(at).action() instanceof Action.Strike stroke
                && !stroke.feint()
                && (anew || carried || stroke.aim().isStated());
        begins = told ? Math.min(begins, at) : begins;
        return told;
    }

    /** "Slide the point under and hit low" is one stroke. */
    private void land(Meant.Lands lands, Span span) {
        Action.Strike hit = new Action.Strike(Role.ATTACK, Path.DIRECT, lands.aim(), false, false, false, false);
        if (lands.strikes() && (endsBegun(hit) || hitsAsTold(lands))) {
            return;
        }
        Optional<Action.Strike> told = last().filter(strike -> strike.role() != Role.EXTENSION)
                .filter(strike -> strike.path() != Path.DIRECT && strike.path() != Path.UNSTATED);
        if (!lands.aim().isStated() && told.isPresent()) {
            replace(told.get(), span);
            return;
        }
        Optional<Action.Strike> open = last().filter(strike ->
                !strike.aim().isStated() || (!lands.strikes() && strike.aim().agreesWith(lands.aim())));
        boolean onItsWay =
                open.filter(strike -> strike.role() != Role.EXTENSION).isPresent();
        if (onItsWay || (open.isPresent() && !lands.strikes())) {
            replace(open.orElseThrow().aimed(lands.aim()), span);
            return;
        }
        if ((!lands.strikes() || explains)
                && clauses.size() > begins
                && clauses.get(clauses.size() - 1).action() instanceof Action.Lunge lunge
                && !lunge.aim().isStated()) {
            replace(new Action.Lunge(lunge.depth(), lands.aim()), span);
            return;
        }
        boolean nothingToEnd =
                !lands.strikes() && clauses.isEmpty() && lands.aim().target().isEmpty();
        if (nothingToEnd) {
            unread.add(span);
            add(new Action.Unread("words"), span);
            return;
        }
        Path path = lands.strikes() ? Path.DIRECT : Path.UNSTATED;
        add(new Action.Strike(Role.ATTACK, path, whereLunged(lands.aim()), false, false, false, false), span);
    }

    /** 'Lunge into the high inside line and touch the chest': the touch arrives in the line of the lunge. */
    private Aim whereLunged(Aim touched) {
        return clauses.size() > begins
                        && clauses.get(clauses.size() - 1).action() instanceof Action.Lunge lunge
                        && lunge.aim().agreesWith(touched)
                ? touched.completedBy(lunge.aim())
                : touched;
    }

    /** Whether what stands before is a riposte, a renewal or the like of which only the name is said: 'Riposte, a cut …'. */
    private boolean namesOnly() {
        return clauses.size() > begins
                && clauses.get(clauses.size() - 1).action() instanceof Action.Strike strike
                && strike.role() != Role.ATTACK
                && strike.role() != Role.EXTENSION
                && strike.path() == Path.UNSTATED
                && !strike.aim().isStated();
    }

    /** Whether a noun behind a stroke is the name of it: 'whip your blade over his point, a cut-over'. */
    private boolean namesAgain(SentencePart piece) {
        return clauses.size() > begins
                && clauses.get(clauses.size() - 1).action() instanceof Action.Strike before
                && piece.meant().size() == 1
                && piece.meant().get(0) instanceof Meant.Does does
                && does.action() instanceof Action.Strike named
                && named.path() == before.path()
                && named.path() != Path.UNSTATED
                && named.path() != Path.DIRECT
                && !named.aim().isStated();
    }

    /** "Deceive the parry: disengage" says one stroke twice; so does "recover and come on guard". */
    private Optional<Action> toldTwice(Action before, Action action) {
        if (repeated) {
            return Optional.empty();
        }
        if (halfTold) {
            halfTold = false;
            Optional<Action> ended = Gloss.ends(before, action);
            if (ended.isPresent()) {
                return ended;
            }
        }
        Optional<Action> kept = Gloss.measureKept(before, action);
        if (kept.isPresent()) {
            return kept;
        }
        if (explains) {
            halfTold = Gloss.begins(before, action);
            if (halfTold || (headed && Gloss.heads(before, action))) {
                return Optional.of(halfTold ? before : action);
            }
            return Gloss.of(before, action).or(() -> Gloss.extension(before, action));
        }
        if (Gloss.coveredBy(before, action)) {
            return Optional.of(before);
        }
        if (Gloss.deceivesBy(before, action)) {
            return Gloss.of(before, action);
        }
        if (before instanceof Action.Recover recover && action instanceof Action.OnGuard) {
            return Gloss.recover(recover, action);
        }
        if (before instanceof Action.OnGuard guard
                && action instanceof Action.Place place
                && (join == Clause.Join.COMMA || join == Clause.Join.WITH)) {
            return Gloss.guard(guard, place);
        }
        if (before instanceof Action.Answer answer
                && answer.reply() == Action.Reply.YIELD
                && action instanceof Action.Parry parry
                && join == Clause.Join.COMMA) {
            return Gloss.ceding(parry);
        }
        if (before instanceof Action.Place place && Gloss.isBare(action)) {
            return Optional.of(new Action.Parry(
                    Optional.of(place.position()), ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
        }
        if (before instanceof Action.Parry parry && action instanceof Action.Parry more) {
            return Gloss.parries(parry, more);
        }
        if (before instanceof Action.Parry parry && action instanceof Action.OnBlade blade) {
            return Gloss.carried(parry, blade);
        }
        if (before instanceof Action.OnBlade
                && Gloss.isBare(action)
                && join != Clause.Join.COMMA
                && besides < clauses.size()) {
            return Optional.of(before);
        }
        if (before instanceof Action.OnGuard guard
                && action instanceof Action.OnBlade blade
                && join == Clause.Join.COMMA) {
            return Gloss.engaged(guard, blade);
        }
        if (action instanceof Action.State state) {
            return Gloss.stance(before, state);
        }
        if (action instanceof Action.Answer answer
                && clauses.get(clauses.size() - 1).subject().equals(subject)) {
            return Gloss.answer(before, answer);
        }
        if (before instanceof Action.Invite && action instanceof Action.Invite) {
            return Gloss.of(before, action);
        }
        if (before instanceof Action.Lunge lunge && action instanceof Action.Lunge more && join == Clause.Join.COMMA) {
            return Gloss.lunge(lunge, more);
        }
        return Gloss.extension(before, action);
    }

    private void replace(Action action, Span more) {
        Clause last = clauses.remove(clauses.size() - 1);
        clauses.add(new Clause(action, last.subject(), last.span().to(more), last.join(), last.doubts()));
    }

    // ---- what was not read

    private void doubt(int at, Doubt doubt) {
        if (at >= begins && at < clauses.size()) {
            Clause clause = clauses.get(at);
            Set<Doubt> doubts = EnumSet.of(doubt);
            doubts.addAll(clause.doubts());
            clauses.set(at, new Clause(clause.action(), clause.subject(), clause.span(), clause.join(), doubts));
        }
    }

    /** Gaps leave in doubt what stands beside them up to the next sign; alone they are a thing unread. */
    private void endStretch() {
        if (!gaps.isEmpty()) {
            if (clauses.size() == stretch) {
                Span span = span(gaps.get(0)).to(span(gaps.get(gaps.size() - 1)));
                clauses.add(new Clause(new Action.Unread("words"), subject, span, join));
            } else {
                for (int at = stretch; at < clauses.size(); at++) {
                    for (Doubt doubt : doubts(clauses.get(at))) {
                        doubt(at, doubt);
                    }
                }
            }
        }
        gaps.clear();
        beside.clear();
        stretch = clauses.size();
    }

    private Set<Doubt> doubts(Clause clause) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        for (SentencePart gap : gaps) {
            boolean before = span(gap).start() < clause.span().start();
            boolean finite = beside.stream().anyMatch(piece -> piece.isForm("3"));
            if (before) {
                doubts.add(finite ? Doubt.WHO : Doubt.DONE);
            } else {
                doubts.addAll(behind(clause.action()));
            }
        }
        return doubts;
    }

    private static Set<Doubt> behind(Action action) {
        if (action instanceof Action.Lunge) {
            return EnumSet.of(Doubt.STEPS, Doubt.MANNER);
        }
        if (action instanceof Action.Step || action instanceof Action.Withdraw) {
            return EnumSet.of(Doubt.STEPS);
        }
        return EnumSet.of(action instanceof Action.Mask ? Doubt.MASK : Doubt.MANNER);
    }
}
