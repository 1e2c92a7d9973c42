package org.drillwright.notation;

import java.util.List;
import java.util.Optional;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Trifle;
import org.drillwright.notation.Action.Way;

/** Makes the finished clause of a draft. */
final class ClauseMaker {

    private final Draft draft;

    private ClauseMaker(Draft draft) {
        this.draft = draft;
    }

    /** The clause, and behind it the measure that was stated with it. */
    static List<Clause> make(Draft draft) {
        Clause clause = new Clause(new ClauseMaker(draft).action(), draft.subject, draft.span, draft.join);
        boolean strikesLunging = draft.kinds.contains("lunging")
                && clause.action() instanceof Action.Strike strike
                && (strike.role() == Role.ATTACK || strike.role() == Role.EXTENSION);
        if (strikesLunging) {
            Action lunge = new Action.Lunge(Depth.FULL, Aim.UNSTATED);
            return List.of(clause, new Clause(lunge, draft.subject, draft.span, Clause.Join.WITH));
        }
        if (draft.isHead("step-lunge", "balestra")) {
            Foot foot = draft.isHead("balestra") ? Foot.JUMP_FORWARD : Foot.ADVANCE;
            Clause step = new Clause(new Action.Step(foot, 1), draft.subject, draft.span, draft.join);
            return List.of(step, new Clause(clause.action(), draft.subject, draft.span, Clause.Join.AND));
        }
        boolean stepsOut = draft.head.is(TermKind.FOOTWORK)
                && draft.measure.equals(Optional.of(Measure.OUT))
                && !draft.isHead("on-guard", "stand");
        if (draft.measure.isEmpty() || draft.head.is(TermKind.CONTACT) || stepsOut) {
            return List.of(clause);
        }
        Action measure = new Action.State(draft.measure, Stance.UNSTATED);
        if (draft.isHead("mask-off")) {
            return List.of(new Clause(measure, Optional.empty(), draft.span, Clause.Join.WITH), clause);
        }
        return List.of(clause, new Clause(measure, draft.subject, draft.span, Clause.Join.WITH));
    }

    private Action action() {
        return switch (draft.head.kind()) {
            case FOOTWORK -> footwork();
            case ARM -> arm();
            case BLADE -> blade();
            case ANSWER -> answer();
            case COURTESY -> courtesy();
            case CONTACT -> new Action.State(draft.measure, stance());
            default -> new Action.Unread(draft.head.id());
        };
    }

    private Action footwork() {
        return switch (draft.head.id()) {
            case "advance" -> step(Foot.ADVANCE);
            case "retreat" -> step(Foot.RETREAT);
            case "jump-forward" -> step(Foot.JUMP_FORWARD);
            case "jump-back" -> step(Foot.JUMP_BACK);
            case "cross-forward" -> step(Foot.CROSS_FORWARD);
            case "cross-back" -> step(Foot.CROSS_BACK);
            case "half-advance" -> step(Foot.HALF_ADVANCE);
            case "half-retreat" -> step(Foot.HALF_RETREAT);
            case "appel" -> step(Foot.APPEL);
            case "gain" -> step(Foot.GAIN);
            case "lunge" -> new Action.Lunge(Depth.FULL, draft.aim);
            case "step-lunge", "balestra" -> new Action.Lunge(Depth.FULL, draft.aim);
            case "half-lunge" -> new Action.Lunge(Depth.HALF, draft.aim);
            case "fleche" -> new Action.Lunge(Depth.FLECHE, draft.aim);
            case "recover", "recover-back" -> new Action.Recover(Way.BACK, stance());
            case "recover-forward" -> new Action.Recover(Way.FORWARD, stance());
            case "on-guard" -> new Action.OnGuard(stance());
            case "withdraw" -> new Action.Withdraw();
            case "stand" -> new Action.Stand();
            default -> unread();
        };
    }

    private Action step(Foot foot) {
        return new Action.Step(foot, draft.times);
    }

    private Action arm() {
        return switch (draft.head.id()) {
            case "bend-arm" -> new Action.Aside(Trifle.BEND_ARM);
            case "extend" -> strike(Role.EXTENSION);
            case "riposte" -> strike(Role.RIPOSTE);
            case "counter-riposte" -> strike(Role.COUNTER_RIPOSTE);
            case "remise" -> strike(Role.REMISE);
            case "redouble" -> strike(Role.REDOUBLE);
            case "reprise" -> strike(Role.REPRISE);
            case "stop" -> strike(Role.STOP);
            case "time-thrust" -> strike(Role.TIME);
            case "counter-time" -> strike(Role.COUNTER_TIME);
            default -> strike(Role.ATTACK);
        };
    }

    private Action strike(Role role) {
        Term way = draft.path.orElse(draft.head);
        boolean cut = way.id().equals("cut") || draft.head.id().equals("cut");
        boolean falseAttack = draft.head.id().equals("false-attack") || draft.kinds.contains("false");
        boolean opposition = draft.kinds.contains("opposition")
                || role == Role.TIME
                || way.id().equals("glide");
        return new Action.Strike(
                role,
                path(way),
                draft.aim,
                cut,
                draft.feint || draft.kinds.contains("feint") || draft.head.id().equals("feint"),
                falseAttack,
                opposition);
    }

    private Path path(Term way) {
        return switch (way.id()) {
            case "thrust", "extend", "cut", "position" -> Path.DIRECT;
            case "disengage" -> Path.DISENGAGE;
            case "cut-over" -> Path.CUT_OVER;
            case "counter-disengage" -> Path.COUNTER_DISENGAGE;
            case "one-two" -> Path.ONE_TWO;
            case "double" -> Path.DOUBLE;
            case "glide" -> Path.GLIDE;
            case "deceive" -> Path.DECEIVE;
            default -> draft.kinds.contains("direct") ? Path.DIRECT : Path.UNSTATED;
        };
    }

    private Action blade() {
        return switch (draft.head.id()) {
            case "parry" -> parry();
            case "position" -> position();
            case "answer" -> new Action.Aside(Trifle.OTHER);
            case "glide" -> strike(Role.ATTACK);
            case "invite" -> invite();
            case "beat" -> onBlade(Contact.BEAT);
            case "press" -> onBlade(Contact.PRESS);
            case "froissement" -> onBlade(Contact.FROISSEMENT);
            case "bind" -> onBlade(Contact.BIND);
            case "croise" -> onBlade(Contact.CROISE);
            case "envelop" -> onBlade(Contact.ENVELOP);
            case "engage" -> onBlade(Contact.ENGAGE);
            case "change-engagement" -> onBlade(Contact.CHANGE_ENGAGEMENT);
            case "absence" -> onBlade(Contact.ABSENCE);
            default -> unread();
        };
    }

    private Action parry() {
        return new Action.Parry(draft.position, parryKind(), draft.aim, inTheLunge());
    }

    private boolean inTheLunge() {
        return draft.kinds.contains("in-the-lunge") || draft.kinds.contains("lunging");
    }

    private ParryKind parryKind() {
        if (draft.kinds.contains("half-circular")) {
            return ParryKind.HALF_CIRCULAR;
        }
        if (draft.kinds.contains("circular")) {
            return ParryKind.CIRCULAR;
        }
        if (draft.kinds.contains("diagonal")) {
            return ParryKind.DIAGONAL;
        }
        if (draft.kinds.contains("ceding")) {
            return ParryKind.CEDING;
        }
        return draft.kinds.contains("simple") || draft.kinds.contains("direct") ? ParryKind.SIMPLE : ParryKind.UNSTATED;
    }

    /** The hand goes somewhere: with a kind it is a parry; without a position nothing of the phrase is moved. */
    private Action position() {
        if (parryKind() != ParryKind.UNSTATED) {
            return parry();
        }
        if (draft.engaged.isPresent()) {
            return new Action.OnGuard(stance());
        }
        if (draft.position.isEmpty() && draft.aim.isStated()) {
            return strike(Role.EXTENSION);
        }
        return draft.position
                .<Action>map(named -> new Action.Place(named, inTheLunge()))
                .orElseGet(() -> new Action.Aside(Trifle.OTHER));
    }

    private Action invite() {
        return draft.aim.isStated() || draft.position.isPresent()
                ? new Action.Invite(draft.aim, draft.position)
                : new Action.Aside(Trifle.OTHER);
    }

    private Action onBlade(Contact contact) {
        return new Action.OnBlade(contact, draft.position, draft.aim);
    }

    private Action answer() {
        return switch (draft.head.id()) {
            case "receive" -> new Action.Answer(Reply.RECEIVE, stance());
            case "hold" -> new Action.Answer(Reply.HOLD, stance());
            case "wait" -> new Action.Answer(Reply.WAIT, stance());
            case "yield" ->
                draft.kinds.contains("ceding") && draft.position.isPresent()
                        ? parry()
                        : new Action.Answer(Reply.YIELD, stance());
            case "evade" -> new Action.Evade();
            case "press-back" -> onBlade(Contact.PRESS_BACK);
            default -> unread();
        };
    }

    private Action courtesy() {
        return switch (draft.head.id()) {
            case "salute" -> new Action.Salute();
            case "mask-on" -> new Action.Mask(true);
            case "mask-off" -> new Action.Mask(false);
            case "swap" -> new Action.Aside(Trifle.SWAP);
            case "halt" -> new Action.Aside(Trifle.HALT);
            case "lower" -> new Action.Aside(Trifle.LOWER);
            default -> new Action.Aside(Trifle.OTHER);
        };
    }

    private Stance stance() {
        boolean engaged = draft.engaged.orElse(false);
        Optional<Position> engagement =
                engaged ? draft.engagement.or(() -> draft.position) : Optional.<Position>empty();
        return new Stance(draft.position, draft.engaged, engagement);
    }

    private Action unread() {
        return new Action.Unread(draft.head.id());
    }
}
