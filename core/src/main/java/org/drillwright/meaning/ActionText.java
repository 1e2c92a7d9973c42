package org.drillwright.meaning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Displacement;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Trifle;
import org.drillwright.notation.Action.Way;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;

/**
 * Actions in a short form of words, for frames and for specifications: {@code strike riposte direct high inside},
 * {@code parry quarte circular}, {@code step retreat 2}. Words behind the first stand in any order.
 */
public final class ActionText {

    private final String head;
    private final List<String> words;

    private ActionText(String head, List<String> words) {
        this.head = head;
        this.words = words;
    }

    /**
     * Reads an action; a guard with a measure is two.
     *
     * @throws IllegalArgumentException if a word is not of that action
     */
    public static List<Meant> read(String text) {
        List<String> words = new ArrayList<>(Arrays.asList(text.strip().split("\\s+")));
        String head = words.remove(0);
        ActionText reader = new ActionText(head, words);
        List<Meant> meant = new ArrayList<>(List.of(reader.meant()));
        reader.one(Measure.values(), ActionText::named)
                .ifPresent(
                        measure -> meant.add(new Meant.Does(new Action.State(Optional.of(measure), Stance.UNSTATED))));
        if (!words.isEmpty()) {
            throw new IllegalArgumentException("'" + String.join(" ", words) + "' is no part of: " + text);
        }
        return meant;
    }

    private Meant meant() {
        return switch (head) {
            case "hit" -> new Meant.Lands(aim(), true);
            case "aim" -> new Meant.Lands(aim(), false);
            case "come" -> new Meant.Comes();
            case "arrive" -> new Meant.Arrives();
            case "again" -> new Meant.Again(one(Position.values()), aim());
            default -> new Meant.Does(action());
        };
    }

    private Action action() {
        return switch (head) {
            case "step" -> new Action.Step(one(Foot.values()).orElseThrow(this::unclear), times());
            case "lunge" -> new Action.Lunge(one(Depth.values()).orElse(Depth.FULL), aim());
            case "recover" -> new Action.Recover(takes("forward") ? Way.FORWARD : Way.BACK, stance());
            case "guard" -> new Action.OnGuard(stance());
            case "place" -> place();
            case "hold" -> new Action.Answer(Reply.HOLD, stance());
            case "wait" -> new Action.Answer(Reply.WAIT, stance());
            case "receive" -> new Action.Answer(Reply.RECEIVE, Stance.UNSTATED);
            case "yield" -> new Action.Answer(Reply.YIELD, Stance.UNSTATED);
            case "follow" -> new Action.Answer(Reply.FOLLOW, Stance.UNSTATED);
            case "withdraw" -> new Action.Withdraw();
            case "stand" -> new Action.Stand();
            case "evade" -> new Action.Evade(one(Displacement.values()).orElse(Displacement.UNSTATED));
            case "salute" -> new Action.Salute();
            case "mask" -> new Action.Mask(takes("on") || !takes("off"));
            case "strike" -> strike();
            case "parry" -> parry();
            case "blade" -> new Action.OnBlade(contact().orElseThrow(this::unclear), one(Position.values()), aim());
            case "invite" -> new Action.Invite(aim(), one(Position.values()));
            case "state" -> new Action.State(one(Measure.values(), ActionText::named), stance());
            case "aside" -> new Action.Aside(one(Trifle.values()).orElse(Trifle.OTHER));
            default -> throw new IllegalArgumentException("no action begins with '" + head + "'");
        };
    }

    private IllegalArgumentException unclear() {
        return new IllegalArgumentException("'" + head + "' wants a kind");
    }

    private Action place() {
        boolean lunged = takes("lunged");
        Stance stance = stance();
        return stance.engaged().isPresent() || stance.guard().isEmpty()
                ? new Action.OnGuard(stance)
                : new Action.Place(stance.guard().get(), lunged);
    }

    private Action strike() {
        Role role = one(Role.values()).orElseThrow(this::unclear);
        Path path = one(Path.values()).orElse(Path.UNSTATED);
        boolean cut = takes("cut");
        boolean feint = takes("feint");
        boolean falseAttack = takes("false");
        boolean opposition = takes("opposition");
        takes("same-line");
        return new Action.Strike(role, path, aim(), cut, feint, falseAttack, opposition);
    }

    private Action parry() {
        Optional<Position> position = one(Position.values());
        ParryKind kind = one(ParryKind.values()).orElse(ParryKind.UNSTATED);
        boolean lunged = takes("lunged");
        return new Action.Parry(position, kind, aim(), lunged);
    }

    private Optional<Contact> contact() {
        if (takes("change")) {
            return Optional.of(Contact.CHANGE_ENGAGEMENT);
        }
        return one(Contact.values());
    }

    private Stance stance() {
        Optional<Position> guard = one(Position.values());
        Optional<Boolean> engaged =
                takes("engaged") ? Optional.of(true) : takes("apart") ? Optional.of(false) : Optional.<Boolean>empty();
        Optional<Position> engagement = words.stream()
                .filter(word -> word.startsWith("on-"))
                .findFirst()
                .map(word -> Position.valueOf(word.substring(3).toUpperCase(Locale.ROOT)));
        words.removeIf(word -> word.startsWith("on-"));
        Optional<Position> hand = guard.or(() -> engagement);
        return new Stance(hand, engaged, engaged.orElse(false) ? engagement.or(() -> guard) : Optional.empty());
    }

    private Aim aim() {
        Optional<Height> height = one(Height.values());
        Optional<Width> width = one(Width.values());
        Optional<Target> target = one(Target.values());
        boolean whichCheek = width.isPresent() && target.equals(Optional.of(Target.CHEEK));
        return whichCheek
                ? new Aim(height, Optional.empty(), width.map(ActionText::cheek))
                : new Aim(height, width, target);
    }

    private static Target cheek(Width side) {
        return side == Width.INSIDE ? Target.INSIDE_CHEEK : Target.OUTSIDE_CHEEK;
    }

    private int times() {
        Optional<String> number =
                words.stream().filter(word -> word.matches("\\d{1,4}")).findFirst();
        number.ifPresent(words::remove);
        return number.map(Integer::parseInt).orElse(1);
    }

    private boolean takes(String word) {
        return words.remove(word);
    }

    private <E extends Enum<E>> Optional<E> one(E[] values) {
        return one(values, ActionText::word);
    }

    private <E extends Enum<E>> Optional<E> one(E[] values, java.util.function.Function<E, String> word) {
        for (E value : values) {
            if (takes(word.apply(value))) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }

    private static String named(Measure measure) {
        return measure == Measure.OUT ? "out" : measure.word() + "-distance";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    // ---- the other way

    /** The short form of an action. */
    public static String of(Action action) {
        return action.match(WRITER);
    }

    private static final Writer WRITER = new Writer();

    private static String joined(Object... parts) {
        return Stream.of(parts)
                .map(part -> part instanceof Optional<?> maybe ? maybe.orElse(null) : part)
                .filter(java.util.Objects::nonNull)
                .map(part -> part instanceof Enum<?> value ? word(value) : part.toString())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String flag(boolean set, String word) {
        return set ? word : "";
    }

    private static String aim(Aim aim) {
        return joined(aim.height(), aim.width(), aim.target());
    }

    private static String stance(Stance stance) {
        boolean told = stance.engagement().isPresent() && !stance.engagement().equals(stance.guard());
        return joined(
                stance.guard(),
                stance.engaged().map(engaged -> engaged ? "engaged" : "apart"),
                told ? stance.engagement().map(position -> "on-" + position.word()) : Optional.empty());
    }

    private static final class Writer implements Action.Cases<String> {
        @Override
        public String step(Action.Step step) {
            return joined("step", step.foot(), step.times());
        }

        @Override
        public String lunge(Action.Lunge lunge) {
            return joined("lunge", lunge.depth() == Depth.FULL ? "" : lunge.depth(), aim(lunge.aim()));
        }

        @Override
        public String recover(Action.Recover recover) {
            return joined("recover", flag(recover.way() == Way.FORWARD, "forward"), stance(recover.stance()));
        }

        @Override
        public String onGuard(Action.OnGuard onGuard) {
            return joined("guard", stance(onGuard.stance()));
        }

        @Override
        public String withdraw(Action.Withdraw withdraw) {
            return "withdraw";
        }

        @Override
        public String stand(Action.Stand stand) {
            return "stand";
        }

        @Override
        public String strike(Action.Strike strike) {
            return joined(
                    "strike",
                    strike.role(),
                    strike.path() == Path.UNSTATED ? "" : strike.path(),
                    aim(strike.aim()),
                    flag(strike.cut(), "cut"),
                    flag(strike.feint(), "feint"),
                    flag(strike.falseAttack(), "false"),
                    flag(strike.opposition(), "opposition"));
        }

        @Override
        public String parry(Action.Parry parry) {
            return joined(
                    "parry",
                    parry.position(),
                    parry.kind() == ParryKind.UNSTATED ? "" : parry.kind(),
                    aim(parry.aim()),
                    flag(parry.inTheLunge(), "lunged"));
        }

        @Override
        public String place(Action.Place place) {
            return joined("place", place.position(), flag(place.inTheLunge(), "lunged"));
        }

        @Override
        public String onBlade(Action.OnBlade onBlade) {
            String contact = onBlade.contact() == Contact.CHANGE_ENGAGEMENT ? "change" : word(onBlade.contact());
            return joined("blade", contact, onBlade.position(), aim(onBlade.aim()));
        }

        @Override
        public String invite(Action.Invite invite) {
            return joined("invite", aim(invite.aim()), invite.position());
        }

        @Override
        public String evade(Action.Evade evade) {
            return joined("evade", evade.how() == Displacement.UNSTATED ? "" : evade.how());
        }

        @Override
        public String answer(Action.Answer answer) {
            return joined(answer.reply(), stance(answer.stance()));
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
            return joined("state", state.measure().map(ActionText::named), stance(state.stance()));
        }

        @Override
        public String aside(Action.Aside aside) {
            return joined("aside", aside.trifle() == Trifle.OTHER ? "" : aside.trifle());
        }

        @Override
        public String unread(Action.Unread unread) {
            return "unread";
        }
    }
}
