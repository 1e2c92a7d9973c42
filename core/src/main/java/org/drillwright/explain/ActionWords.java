package org.drillwright.explain;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;

/** Says an action back in the words of the trade, so that an author sees what was read. */
public final class ActionWords implements Action.Cases<String> {

    private ActionWords() {}

    public static String of(Action action) {
        return action.match(new ActionWords());
    }

    @Override
    public String step(Action.Step step) {
        return name(step.foot()) + (step.times() > 1 ? ", " + step.times() + " times" : "");
    }

    @Override
    public String lunge(Action.Lunge lunge) {
        String depth = switch (lunge.depth()) {
            case FULL -> "lunge";
            case HALF -> "half lunge";
            case FLECHE -> "flèche";
            case UNLESS_LUNGED -> "on the lunge";
        };
        return depth + aim(lunge.aim());
    }

    @Override
    public String recover(Action.Recover recover) {
        String way = recover.way() == Action.Way.FORWARD ? "recovery forward" : "recovery";
        return way + stance(recover.stance());
    }

    @Override
    public String onGuard(Action.OnGuard onGuard) {
        return "on guard" + stance(onGuard.stance());
    }

    @Override
    public String withdraw(Action.Withdraw withdraw) {
        return "out of distance";
    }

    @Override
    public String stand(Action.Stand stand) {
        return "attention";
    }

    @Override
    public String strike(Action.Strike strike) {
        String role = strike.falseAttack()
                ? "false attack"
                : strike.feint() ? "feint" : strike.role() == Action.Role.EXTENSION ? "extension" : name(strike.role());
        String path = strike.path() == Action.Path.UNSTATED || strike.role() == Action.Role.EXTENSION
                ? ""
                : strike.path() == Action.Path.DIRECT
                        ? (strike.cut() ? " by a cut" : " straight")
                        : " by " + name(strike.path());
        return role + path + aim(strike.aim()) + (strike.opposition() ? ", with opposition" : "");
    }

    @Override
    public String parry(Action.Parry parry) {
        return parry.kind().words()
                + parry.position().map(one -> " of " + one.word()).orElse("")
                + (parry.inTheLunge() ? ", in the lunge" : "");
    }

    @Override
    public String place(Action.Place place) {
        return "hand to " + place.position().word();
    }

    @Override
    public String onBlade(Action.OnBlade onBlade) {
        return name(onBlade.contact())
                + onBlade.position().map(one -> " in " + one.word()).orElse("")
                + aim(onBlade.aim());
    }

    @Override
    public String invite(Action.Invite invite) {
        return "invitation" + invite.position().map(one -> " in " + one.word()).orElse("") + aim(invite.aim());
    }

    @Override
    public String evade(Action.Evade evade) {
        return "evasion";
    }

    @Override
    public String answer(Action.Answer answer) {
        return switch (answer.reply()) {
            case RECEIVE -> "takes the touch";
            case HOLD -> "holds";
            case WAIT -> "waits";
            case YIELD -> "lets the blade be taken";
        };
    }

    @Override
    public String salute(Action.Salute salute) {
        return "salute";
    }

    @Override
    public String mask(Action.Mask mask) {
        return mask.on() ? "mask on" : "mask off";
    }

    @Override
    public String state(Action.State state) {
        return "stated: " + state.measure().map(one -> one.word() + " distance").orElse("") + stance(state.stance());
    }

    @Override
    public String aside(Action.Aside aside) {
        return aside.trifle() == Action.Trifle.OTHER ? "nothing of the phrase" : name(aside.trifle());
    }

    @Override
    public String unread(Action.Unread unread) {
        return "words that could not be read";
    }

    private static String aim(Aim aim) {
        return aim.isStated() ? " to the " + aim : "";
    }

    private static String stance(Stance stance) {
        Optional<Position> guard = stance.guard();
        String engaged = stance.engaged()
                .map(one -> one ? ", engaged" : ", blades apart")
                .orElse("");
        return guard.map(one -> " in " + one.word()).orElse("") + engaged;
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
