package org.drillwright.reading;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Way;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;
import org.drillwright.notation.Utterance;

/** The terms that actions are known by: a riposte by disengage is a riposte and a disengage. */
public final class GlossaryTerms implements Action.Cases<List<GlossaryTerm>> {

    private static final GlossaryTerms TERMS = new GlossaryTerms();

    private GlossaryTerms() {}

    /** The terms of a text, in the order in which it first says them. */
    public static Set<GlossaryTerm> of(Utterance utterance) {
        Set<GlossaryTerm> terms = new LinkedHashSet<>();
        for (Clause clause : utterance.clauses()) {
            terms.addAll(of(clause.action()));
        }
        return terms;
    }

    /** The terms of an action, the one that it is foremost known by first. */
    public static List<GlossaryTerm> of(Action action) {
        return action.match(TERMS);
    }

    private static List<GlossaryTerm> terms(TermKind kind, String id, Object... more) {
        List<GlossaryTerm> terms = new ArrayList<>(List.of(new GlossaryTerm(kind, id)));
        for (Object one : more) {
            add(one, terms);
        }
        return terms;
    }

    private static void add(Object one, List<GlossaryTerm> terms) {
        if (one instanceof Aim aim) {
            aim.target().ifPresent(target -> terms.add(of(target)));
        } else if (one instanceof Stance stance) {
            stance.guard().ifPresent(position -> terms.add(of(position)));
        } else if (one instanceof Optional<?> position && position.isPresent()) {
            terms.add(of((Position) position.get()));
        }
    }

    static GlossaryTerm of(Position position) {
        return new GlossaryTerm(TermKind.POSITION, position.word());
    }

    static GlossaryTerm of(Target target) {
        return new GlossaryTerm(TermKind.TARGET, word(target));
    }

    static GlossaryTerm of(Measure measure) {
        return new GlossaryTerm(TermKind.MEASURE, measure.word());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public List<GlossaryTerm> step(Action.Step step) {
        return terms(TermKind.FOOTWORK, word(step.foot()));
    }

    @Override
    public List<GlossaryTerm> lunge(Action.Lunge lunge) {
        String id = lunge.depth() == Depth.HALF ? "half-lunge" : lunge.depth() == Depth.FLECHE ? "fleche" : "lunge";
        return terms(TermKind.FOOTWORK, id, lunge.aim());
    }

    @Override
    public List<GlossaryTerm> recover(Action.Recover recover) {
        String id = recover.way() == Way.FORWARD ? "recover-forward" : "recover";
        return terms(TermKind.FOOTWORK, id, recover.stance());
    }

    @Override
    public List<GlossaryTerm> onGuard(Action.OnGuard onGuard) {
        return terms(TermKind.FOOTWORK, "on-guard", onGuard.stance());
    }

    @Override
    public List<GlossaryTerm> withdraw(Action.Withdraw withdraw) {
        return terms(TermKind.FOOTWORK, "withdraw");
    }

    @Override
    public List<GlossaryTerm> stand(Action.Stand stand) {
        return terms(TermKind.FOOTWORK, "stand");
    }

    @Override
    public List<GlossaryTerm> strike(Action.Strike strike) {
        List<String> ids = new ArrayList<>();
        boolean plain = strike.role() == Role.ATTACK || strike.role() == Role.EXTENSION;
        if (strike.feint()) {
            ids.add("feint");
        }
        if (strike.falseAttack()) {
            ids.add("false-attack");
        } else if (strike.role() == Role.EXTENSION) {
            ids.add("extend");
        } else if (!plain) {
            ids.add(strike.role() == Role.TIME ? "time-thrust" : word(strike.role()));
        }
        if (strike.cut()) {
            ids.add("cut");
        } else if (strike.path() == Path.DIRECT && strike.role() == Role.ATTACK) {
            ids.add("thrust");
        }
        if (strike.path() != Path.DIRECT && strike.path() != Path.UNSTATED) {
            ids.add(word(strike.path()));
        }
        if (ids.isEmpty()) {
            ids.add("attack");
        }
        List<GlossaryTerm> terms = new ArrayList<>();
        ids.forEach(id -> terms.add(new GlossaryTerm(TermKind.ARM, id)));
        add(strike.aim(), terms);
        return terms;
    }

    @Override
    public List<GlossaryTerm> parry(Action.Parry parry) {
        return terms(TermKind.BLADE, "parry", parry.position());
    }

    @Override
    public List<GlossaryTerm> place(Action.Place place) {
        return List.of(of(place.position()));
    }

    @Override
    public List<GlossaryTerm> onBlade(Action.OnBlade onBlade) {
        TermKind kind = onBlade.contact() == Action.Contact.PRESS_BACK ? TermKind.ANSWER : TermKind.BLADE;
        return terms(kind, word(onBlade.contact()), onBlade.position(), onBlade.aim());
    }

    @Override
    public List<GlossaryTerm> invite(Action.Invite invite) {
        return terms(TermKind.BLADE, "invite", invite.position(), invite.aim());
    }

    @Override
    public List<GlossaryTerm> evade(Action.Evade evade) {
        return terms(TermKind.ANSWER, "evade");
    }

    @Override
    public List<GlossaryTerm> answer(Action.Answer answer) {
        return terms(TermKind.ANSWER, word(answer.reply()), answer.stance());
    }

    @Override
    public List<GlossaryTerm> salute(Action.Salute salute) {
        return terms(TermKind.COURTESY, "salute");
    }

    @Override
    public List<GlossaryTerm> mask(Action.Mask mask) {
        return terms(TermKind.COURTESY, mask.on() ? "mask-on" : "mask-off");
    }

    @Override
    public List<GlossaryTerm> state(Action.State state) {
        return state.measure().map(measure -> List.of(of(measure))).orElse(List.of());
    }

    @Override
    public List<GlossaryTerm> aside(Action.Aside aside) {
        return List.of();
    }

    @Override
    public List<GlossaryTerm> unread(Action.Unread unread) {
        return List.of();
    }
}
