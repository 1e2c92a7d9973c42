package org.drillwright.notation;

import java.util.Optional;

/**
 * One thing that a person does on a count, as the words say it; what it comes to is decided by the position it is done
 * in. Where kinds differ only by a label they share a record.
 */
public sealed interface Action {

    /** Answers with the branch of this action's kind: a new kind does not compile until every reader handles it. */
    <R> R match(Cases<R> cases);

    /** Whether it answers the partner so. */
    default boolean isReply(Reply reply) {
        return this instanceof Answer answer && answer.reply() == reply;
    }

    /** One branch for each kind of action. */
    interface Cases<R> {
        R step(Step step);

        R lunge(Lunge lunge);

        R recover(Recover recover);

        R onGuard(OnGuard onGuard);

        R withdraw(Withdraw withdraw);

        R stand(Stand stand);

        R strike(Strike strike);

        R parry(Parry parry);

        R place(Place place);

        R onBlade(OnBlade onBlade);

        R invite(Invite invite);

        R evade(Evade evade);

        R answer(Answer answer);

        R salute(Salute salute);

        R mask(Mask mask);

        R state(State state);

        R aside(Aside aside);

        R unread(Unread unread);
    }

    /** Feet that change the measure or the rhythm. */
    enum Foot {
        ADVANCE(2),
        RETREAT(-2),
        JUMP_FORWARD(2),
        JUMP_BACK(-2),
        CROSS_FORWARD(2),
        CROSS_BACK(-2),
        HALF_ADVANCE(1),
        HALF_RETREAT(-1),
        /** The rear foot is brought up: the next lunge reaches further. */
        GAIN(0),
        APPEL(0);

        private final int halfSteps;

        Foot(int halfSteps) {
            this.halfSteps = halfSteps;
        }

        /** How far it carries the fencer, in half steps: above 0 forward, below 0 back. */
        public int halfSteps() {
            return halfSteps;
        }
    }

    /** @param times how many, 1 or more */
    record Step(Foot foot, int times) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.step(this);
        }
    }

    /** How far the front foot goes. */
    enum Depth {
        FULL,
        HALF,
        /** The rear foot passes. */
        FLECHE,
        /** Full for who stands; none for who is in the lunge already. */
        UNLESS_LUNGED
    }

    /** @param aim where the blade goes with it, if said here and not with the arm */
    record Lunge(Depth depth, Aim aim) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lunge(this);
        }
    }

    /** Which foot moves in a recovery. */
    enum Way {
        /** The front foot comes back; also where nothing is said. */
        BACK,
        /** The rear foot comes up. */
        FORWARD
    }

    /** @param stance what is taken up with it, part of the one action */
    record Recover(Way way, Stance stance) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.recover(this);
        }
    }

    record OnGuard(Stance stance) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.onGuard(this);
        }
    }

    /** Out of distance. */
    record Withdraw() implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.withdraw(this);
        }
    }

    /** Upright, blade at rest. */
    record Stand() implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.stand(this);
        }
    }

    /** What a stroke is in the phrase (Technical Rules t.9, t.12, t.13). */
    enum Role {
        ATTACK,
        RIPOSTE,
        COUNTER_RIPOSTE,
        REMISE,
        REDOUBLE,
        REPRISE,
        STOP,
        TIME,
        COUNTER_TIME,
        /** The arm only comes forward; with a lunge behind it, it is an attack. */
        EXTENSION;

        /** Whether it meets somebody in the midst of an attack. */
        public boolean stops() {
            return this == STOP || this == TIME;
        }
    }

    /** How the blade gets to its line. */
    enum Path {
        DIRECT,
        DISENGAGE,
        CUT_OVER,
        COUNTER_DISENGAGE,
        ONE_TWO,
        DOUBLE,
        /** Along the partner's blade. */
        GLIDE,
        /** The parry is deceived, it is not said how. */
        DECEIVE,
        UNSTATED
    }

    /**
     * A point or an edge that goes towards someone.
     *
     * @param cut whether an edge is said; a point at thrusting weapons goes without saying
     * @param feint whether it is only to threaten
     * @param falseAttack whether it is meant to be parried
     * @param opposition whether the partner's blade is held out
     */
    record Strike(Role role, Path path, Aim aim, boolean cut, boolean feint, boolean falseAttack, boolean opposition)
            implements Action {

        /** A stroke of which no more is said than this. */
        public static Strike plain(Role role, Path path, Aim aim) {
            return new Strike(role, path, aim, false, false, false, false);
        }

        /** An attack of which no more is said than where it goes. */
        public static Strike attack(Aim aim) {
            return plain(Role.ATTACK, Path.UNSTATED, aim);
        }

        /** This stroke, its aim completed by what is said of it elsewhere. */
        public Strike aimed(Aim more) {
            return at(aim.completedBy(more));
        }

        /** This stroke, sent elsewhere. */
        public Strike at(Aim other) {
            return new Strike(role, path, other, cut, feint, falseAttack, opposition);
        }

        /** This stroke, called otherwise and made in another way. */
        public Strike by(Role otherRole, Path otherPath) {
            return new Strike(otherRole, otherPath, aim, cut, feint, falseAttack, opposition);
        }

        /** This stroke, made with the edge. */
        public Strike asCut() {
            return new Strike(role, path, aim, true, feint, falseAttack, opposition);
        }

        /** This stroke, only to threaten. */
        public Strike asFeint() {
            return new Strike(role, path, aim, cut, true, falseAttack, opposition);
        }

        /** This stroke, with the partner's blade held out. */
        public Strike opposed() {
            return new Strike(role, path, aim, cut, feint, falseAttack, true);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.strike(this);
        }
    }

    /** How a parry travels (facts: Warford 1884, p. 10-17; Britannica, 11th ed., p. 593). */
    enum ParryKind {
        UNSTATED,
        SIMPLE,
        HALF_CIRCULAR,
        DIAGONAL,
        CIRCULAR,
        CEDING
    }

    /** @param position empty if the words name none */
    record Parry(Optional<Position> position, ParryKind kind, Aim aim, boolean inTheLunge) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.parry(this);
        }
    }

    /** The hand goes to a position: a parry where an attack is coming, a guard otherwise. */
    record Place(Position position, boolean inTheLunge) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.place(this);
        }
    }

    /** What is done to the partner's blade. */
    enum Contact {
        BEAT,
        PRESS,
        FROISSEMENT,
        BIND,
        CROISE,
        ENVELOP,
        ENGAGE,
        CHANGE_ENGAGEMENT,
        /** The blade is left or withheld. */
        ABSENCE,
        /** A press is answered, or the blade is looked for. */
        PRESS_BACK
    }

    /**
     * @param position where it is done, or where it carries the blade
     * @param aim where the point goes with it, if said
     */
    record OnBlade(Contact contact, Optional<Position> position, Aim aim) implements Action {
        /** Whether it sends the point along the blade to somebody: a bind or a beat with an aim of its own. */
        public boolean carriesPoint() {
            return aim.isStated()
                    && switch (contact) {
                        case BEAT, FROISSEMENT ->
                            aim.target().isPresent() || aim.height().isPresent();
                        case BIND, CROISE, ENVELOP -> true;
                        case PRESS -> aim.target().isPresent();
                        case ENGAGE, CHANGE_ENGAGEMENT, ABSENCE, PRESS_BACK -> false;
                    };
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.onBlade(this);
        }
    }

    /** A line is opened on purpose. */
    record Invite(Aim aim, Optional<Position> position) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.invite(this);
        }
    }

    /** Where a target is taken when it is taken away. */
    enum Displacement {
        UNSTATED,
        /** Below the blade: ducked, in a passata sotto with the rear foot far back and the rear hand on the floor. */
        DUCKED,
        /** Off the line: a step to the side, in an inquartata the rear foot behind and across. */
        ASIDE,
        /** The body drawn back over feet that stay. */
        BACK,
        HAND,
        /** The front leg brought back to the other. */
        LEG
    }

    /** The target is taken away. */
    record Evade(Displacement how) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.evade(this);
        }
    }

    /** An answer without a parry. */
    enum Reply {
        /** The touch is taken on purpose. */
        RECEIVE,
        /** All stays as it is. */
        HOLD,
        WAIT,
        /** The blade is lent to the partner's action on it. */
        YIELD,
        /** The feet go with the partner's, so that the measure stays as it is. */
        FOLLOW
    }

    /** @param stance a guard named with it */
    record Answer(Reply reply, Stance stance) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.answer(this);
        }
    }

    record Salute() implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.salute(this);
        }
    }

    record Mask(boolean on) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.mask(this);
        }
    }

    /** Not a thing to do but how things stand: the measure, the contact. */
    record State(Optional<Measure> measure, Stance stance) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.state(this);
        }
    }

    /** Things that touch nothing the phrase consists of. */
    enum Trifle {
        /** The arm or hand is drawn back. */
        BEND_ARM,
        LOWER,
        SWAP,
        HALT,
        /** A touch that has arrived is owned to. */
        ACKNOWLEDGE,
        /** Both hold the weapon in the hand of the same side. */
        HANDS_ALIKE,
        /** One holds it in the right hand, the other in the left. */
        HANDS_OPPOSITE,
        /** The partner's forte is taken with one's own foible. */
        FOIBLE_ON_FORTE,
        /** The hand or the blade goes somewhere, and it is not said into which position. */
        MOVED,
        OTHER
    }

    record Aside(Trifle trifle) implements Action {

        /** Whether nothing in the phrase hangs on it where another action is told with it. */
        public boolean playsNothing() {
            return switch (trifle) {
                case OTHER, MOVED, HANDS_ALIKE, HANDS_OPPOSITE, FOIBLE_ON_FORTE -> true;
                case BEND_ARM, LOWER, SWAP, HALT, ACKNOWLEDGE -> false;
            };
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.aside(this);
        }
    }

    /** Words that could not be read. */
    record Unread(String words) implements Action {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.unread(this);
        }
    }
}
