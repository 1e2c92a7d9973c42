package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.State;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Closing;
import org.drillwright.print.pose.Footing;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.Stroke;
import org.drillwright.print.pose.Threat;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/** Says what a picture shows, in the language of the card; from what was played, never from what was drawn. */
final class Caption {

    private final Locale language;

    Caption(Language language) {
        this.language = language.locale();
    }

    /** Strokes, feet and hands, then how they stand. */
    String alternative(Scene scene, Pose pose) {
        List<Message> said = new ArrayList<>(done(scene));
        scene.stroke().ifPresent(stroke -> said.addAll(closings(scene)));
        said.add(stand(scene, pose));
        return told(said);
    }

    /** The strokes; without any, what feet and hands did; without that, how they stand. */
    String gist(Scene scene, Pose pose) {
        return Optional.of(told(done(scene)))
                .filter(done -> !done.isEmpty())
                .orElseGet(() -> told(List.of(stand(scene, pose))));
    }

    private String told(List<Message> sentences) {
        return sentences.stream().reduce(Message.none(), Message::then).in(language);
    }

    private static Message of(String key, Object... values) {
        return Message.of(Caption.class, key, values);
    }

    private static Message of(String kind, Enum<?> one) {
        return of(kind + "." + ConstantName.dotted(one));
    }

    private static List<Message> done(Scene scene) {
        List<Message> said = new ArrayList<>(unknown(scene));
        said.addAll(earlier(scene));
        scene.stroke().map(stroke -> stroke(scene, stroke)).ifPresent(said::add);
        Stream.of(Side.values())
                .filter(side ->
                        scene.stroke().filter(stroke -> stroke.by() == side).isEmpty())
                .forEach(side -> moves(scene, side).ifPresent(moves -> said.add(of("moves", who(scene, side), moves))));
        if (scene.stroke().isEmpty()) {
            said.addAll(closings(scene));
        }
        return said;
    }

    private static List<Message> unknown(Scene scene) {
        return Stream.of(Side.values())
                .filter(side ->
                        scene.at(side.other()).filter(aimed -> !aimed.known()).isPresent())
                .map(side -> of("unknown.attack", Terms.of(side).capital()))
                .toList();
    }

    /** A stroke that went before the last one. */
    private static List<Message> earlier(Scene scene) {
        return Stream.of(Side.values())
                .filter(side ->
                        scene.stroke().filter(stroke -> stroke.by() != side).isPresent())
                .flatMap(side -> scene.at(side.other()).stream()
                        .filter(aimed -> aimed.threat().isPresent())
                        .map(aimed -> of(
                                "earlier",
                                Terms.of(side).capital(),
                                blow(side, aimed, Path.UNSTATED, scene.isSabre(), Optional.empty()))))
                .toList();
    }

    private static Message stroke(Scene scene, Stroke stroke) {
        Side by = stroke.by();
        Message who = Terms.of(by).capital();
        Aimed aimed = scene.at(by.other())
                .orElseGet(() -> new Aimed(true, Optional.of(stroke.threat()), Closing.NONE, false));
        Message blow = blow(by, aimed, stroke.path(), stroke.cut(), stroke.at());
        Message taking = stroke.bound() ? of("held.bind", blow) : stroke.held() ? of("held.opposition", blow) : blow;
        return moves(scene, by)
                .map(moves -> of("stroke", who, moves, taking))
                .orElseGet(() -> of("stroke.arm", who, taking));
    }

    /** What it is, where it goes, and what becomes of it. */
    private static Message blow(Side by, Aimed aimed, Path path, boolean cut, Optional<Target> at) {
        Threat threat = aimed.threat().orElseThrow();
        Message owner = Terms.of(by.other());
        Message into = threat.line()
                .value()
                .map(line -> into(line, owner))
                .or(() -> at.filter(one -> one != Target.MARK).map(target -> of("into.part", owner, Terms.of(target))))
                .orElseGet(() -> of("into.unknown", owner));
        Message blow = of("blow", kind(threat.attack(), path, cut), into);
        Message shown =
                threat.shown().map(line -> of("shown", blow, into(line, owner))).orElse(blow);
        return end(shown, threat, aimed, cut);
    }

    /** At sabre a line is a part of the body. */
    private static Message into(Line line, Message owner) {
        return of(line.height().isPresent() ? "into.line" : "into.part", owner, Terms.of(line));
    }

    private static Message kind(Attack attack, Path path, boolean cut) {
        Message role = attack.feint()
                ? of("role.feint")
                : attack.meant() || attack.role() == Role.EXTENSION ? of("role", role(attack)) : of("role.threat");
        if (path == Path.UNSTATED) {
            return role;
        }
        Message way = cut && path == Path.DIRECT ? of("way.cut") : Terms.of(path);
        boolean plain = role(attack) == Role.ATTACK && attack.meant() && !attack.feint();
        return plain ? way : of("kind", role, way);
    }

    /** An extension that means to touch is an attack. */
    private static Role role(Attack attack) {
        return attack.meant() && attack.role() == Role.EXTENSION ? Role.ATTACK : attack.role();
    }

    private static Message end(Message blow, Threat threat, Aimed aimed, boolean cut) {
        if (threat.end() instanceof AttackEnd.PastTheParry past) {
            return of("fate", blow, of("fate.past.parry", Terms.of(past.by())));
        }
        Optional<Message> by = aimed.closing().by().map(Terms::of);
        boolean drew = threat.end() instanceof AttackEnd.DrewParry;
        boolean parried = threat.end() instanceof AttackEnd.Parried;
        if (by.isEmpty() || !(drew || parried)) {
            return of("fate", blow, of("fate." + threat.end().key()));
        }
        String round = aimed.carriedRound() ? ".round" : "";
        if (drew) {
            return of("fate", blow, of("fate.drew" + round, by.get()));
        }
        String how = aimed.carriedRound() || closes(threat, aimed) ? "fate.closed" + round : "fate.answered";
        return of(cut ? "crossed.cut" : "crossed", of("fate", blow, of(how, by.get())));
    }

    /** Whether the hand parries the stroke, or what it was taken for, by closing its line and no other. */
    private static boolean closes(Threat threat, Aimed aimed) {
        return (threat.end() instanceof AttackEnd.Parried || threat.end() instanceof AttackEnd.DrewParry)
                && threat.line()
                        .value()
                        .filter(line -> aimed.closing().closed().equals(Set.of(line)))
                        .isPresent();
    }

    /** What feet did, and what hands did besides strokes and positions. */
    private static Optional<Message> moves(Scene scene, Side side) {
        Stream<Message> feet =
                scene.feet().stream().filter(footing -> footing.by() == side).map(footing -> of(move(footing)));
        Stream<Message> hands = scene.gesture(side).stream().map(gesture -> of("gesture", gesture));
        List<Message> moves = Stream.concat(hands, feet).toList();
        return moves.isEmpty() ? Optional.empty() : Optional.of(Message.all(moves));
    }

    /** A lunge, even half of one, goes farther than a foot that is only set forward, and a recovery than a foot brought up. */
    private static String move(Footing footing) {
        boolean forward = footing.forward() > 0;
        double gone = Math.abs(footing.forward());
        return switch (footing.kind()) {
            case FRONT_FOOT -> !forward ? "move.recover" : gone > 0.3 ? "move.lunge" : "move.front.forward";
            case REAR_FOOT -> !forward ? "move.rear.back" : gone > 0.5 ? "move.recover.forward" : "move.rear.forward";
            case BOTH_FEET -> forward ? "move.forward" : "move.back";
            case CROSSING -> forward ? "move.cross.forward" : "move.cross.back";
            case JUMP -> forward ? "move.jump.forward" : "move.jump.back";
            case PASSING -> "move.fleche";
            case STAMP -> "move.stamp";
        };
    }

    private static Message who(Scene scene, Side side) {
        return scene.partner() ? Terms.of(side).capital() : of("side.class");
    }

    /** Lines that hands close, where no parry has said so. */
    private static List<Message> closings(Scene scene) {
        List<Message> said = new ArrayList<>();
        for (Side side : Side.values()) {
            scene.at(side)
                    .filter(aimed -> aimed.threat()
                            .filter(threat -> closes(threat, aimed) || aimed.carriedRound())
                            .isEmpty())
                    .ifPresent(aimed -> said.addAll(closing(who(scene, side), aimed.closing())));
        }
        return said;
    }

    private static List<Message> closing(Message who, Closing closing) {
        if (!closing.known()) {
            return List.of(of("closing.unknown", who));
        }
        boolean sure = !closing.closed().isEmpty();
        List<Message> lines = (sure ? closing.closed() : closing.doubtful())
                .stream().sorted().map(Terms::of).toList();
        if (lines.isEmpty() || closing.by().isEmpty()) {
            return List.of();
        }
        return List.of(of("closing", who, Terms.of(closing.by().get()), sure ? Message.all(lines) : Message.or(lines)));
    }

    /** How they stand. */
    private static Message stand(Scene scene, Pose pose) {
        State state = scene.moment();
        if (pose instanceof Pose.Pair pair) {
            Message leader = person(state.leader(), pair.leader());
            Message follower = person(state.follower(), pair.follower());
            Message measure = state.measure().most() < 0
                    ? Terms.of(Measure.CLOSE)
                    : state.measure().words();
            return state.engagement()
                    .value()
                    .filter(known -> scene.stroke().isEmpty())
                    .map(known -> known.map(contact -> of(
                                    "stand.engaged",
                                    leader,
                                    follower,
                                    measure,
                                    Terms.of(contact.lineOf(Side.FOLLOWER))))
                            .orElseGet(() -> of("stand.apart", leader, follower, measure)))
                    .orElseGet(() -> of("stand", leader, follower, measure));
        }
        return of("stand.solo", person(state.follower(), ((Pose.Alone) pose).person()));
    }

    private static Message person(Fencer fencer, PosedBody person) {
        Message feet = fencer.feet().value().map(known -> of("feet", known)).orElseGet(() -> of("feet.unknown"));
        Message arm = fencer.extended().is(true) ? of("extended", feet) : feet;
        return person.leftHanded() ? of("left.handed", arm) : arm;
    }
}
