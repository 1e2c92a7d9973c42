package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Range;
import org.drillwright.phrase.State;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Closing;
import org.drillwright.print.pose.Footing;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.Stroke;
import org.drillwright.print.pose.Threat;
import org.drillwright.print.pose.body.Person;

/** Says what a picture shows, in the language of the card; from what was played, never from what was drawn. */
final class Spoken {

    private final Words words;

    Spoken(Language language) {
        this.words = Words.in(language);
    }

    /** Strokes, feet and hands, then how they stand. */
    String alternative(Scene scene, Pose pose) {
        List<String> said = new ArrayList<>(done(scene));
        scene.stroke().ifPresent(stroke -> said.addAll(closings(scene)));
        said.add(stand(scene, pose));
        return String.join(" ", said);
    }

    /** The strokes; without any, what feet and hands did; without that, how they stand. */
    String gist(Scene scene, Pose pose) {
        return Optional.of(String.join(" ", done(scene)))
                .filter(done -> !done.isEmpty())
                .orElseGet(() -> stand(scene, pose));
    }

    private List<String> done(Scene scene) {
        List<String> said = new ArrayList<>(unknown(scene));
        said.addAll(earlier(scene));
        scene.stroke().map(stroke -> stroke(scene, stroke)).ifPresent(said::add);
        Stream.of(Side.values())
                .filter(side ->
                        scene.stroke().filter(stroke -> stroke.by() == side).isEmpty())
                .forEach(side ->
                        moves(scene, side).ifPresent(moves -> said.add(words.text("moves", side(scene, side), moves))));
        if (scene.stroke().isEmpty()) {
            said.addAll(closings(scene));
        }
        return said;
    }

    private List<String> unknown(Scene scene) {
        return Stream.of(Side.values())
                .filter(side ->
                        scene.at(side.other()).filter(aimed -> !aimed.known()).isPresent())
                .map(side -> words.text("unknown.attack", words.of("side", side)))
                .toList();
    }

    /** A stroke that went before the last one. */
    private List<String> earlier(Scene scene) {
        return Stream.of(Side.values())
                .filter(side ->
                        scene.stroke().filter(stroke -> stroke.by() != side).isPresent())
                .flatMap(side -> scene.at(side.other()).stream()
                        .filter(aimed -> aimed.threat().isPresent())
                        .map(aimed -> words.text(
                                "earlier",
                                words.of("side", side),
                                blow(side, aimed, Path.UNSTATED, scene.isSabre(), Optional.empty()))))
                .toList();
    }

    private String stroke(Scene scene, Stroke stroke) {
        Side by = stroke.by();
        Aimed aimed = scene.at(by.other())
                .orElseGet(() -> new Aimed(true, Optional.of(stroke.threat()), Closing.NONE, false));
        String taken = stroke.bound() ? words.text("held.bind") : stroke.held() ? words.text("held.opposition") : "";
        String blow = blow(by, aimed, stroke.path(), stroke.cut(), stroke.at()) + taken;
        return moves(scene, by)
                .map(moves -> words.text("stroke", words.of("side", by), moves, blow))
                .orElseGet(() -> words.text("stroke.arm", words.of("side", by), blow));
    }

    /** What it is, where it goes, and what becomes of it. */
    private String blow(Side by, Aimed aimed, Path path, boolean cut, Optional<Target> at) {
        Threat threat = aimed.threat().orElseThrow();
        String owner = words.text("owner." + by.other().word());
        String into = threat.line()
                .value()
                .map(line -> words.text("into." + dotted(line), owner))
                .or(() -> at.filter(one -> one != Target.MARK)
                        .map(target -> words.text("into.target." + dotted(target), owner)))
                .orElseGet(() -> words.text("into.unknown", owner));
        String shown = threat.shown()
                .map(line -> words.text("shown", words.text("into." + dotted(line), owner)))
                .orElse("");
        return kind(threat.attack(), path, cut) + " " + into + shown + end(threat, aimed, cut);
    }

    private static String dotted(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    private String kind(Attack attack, Path path, boolean cut) {
        String role = attack.feint()
                ? words.text("role.feint")
                : attack.meant() || attack.role() == Role.EXTENSION
                        ? words.of("role", role(attack))
                        : words.text("role.threat");
        if (path == Path.UNSTATED) {
            return role;
        }
        String way = cut && path == Path.DIRECT ? words.text("way.cut") : words.of("way", path);
        boolean plain = role(attack) == Role.ATTACK && attack.meant() && !attack.feint();
        return plain ? way : words.text("kind", role, way);
    }

    /** An extension that means to touch is an attack. */
    private static Role role(Attack attack) {
        return attack.meant() && attack.role() == Role.EXTENSION ? Role.ATTACK : attack.role();
    }

    private String end(Threat threat, Aimed aimed, boolean cut) {
        if (threat.end() instanceof AttackEnd.PastTheParry past) {
            return words.text("fate", words.text("fate.past.parry", words.of("position", past.by())));
        }
        Optional<Position> by = aimed.closing().by();
        boolean drew = threat.end() instanceof AttackEnd.DrewParry;
        boolean parried = threat.end() instanceof AttackEnd.Parried;
        if (by.isEmpty() || !(drew || parried)) {
            return words.text("fate", words.text("fate." + threat.end().key()));
        }
        String position = words.of("position", by.get());
        String round = aimed.carriedRound() ? ".round" : "";
        if (drew) {
            return words.text("fate", words.text("fate.drew" + round, position));
        }
        String how = aimed.carriedRound() || closes(threat, aimed) ? "fate.closed" + round : "fate.answered";
        return words.text("fate", words.text(how, position)) + words.text(cut ? "crossed.cut" : "crossed");
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
    private Optional<String> moves(Scene scene, Side side) {
        Stream<String> feet = scene.feet().stream()
                .filter(footing -> footing.by() == side)
                .map(Spoken::move)
                .map(words::text);
        Stream<String> hands = scene.gesture(side).stream().map(gesture -> words.of("gesture", gesture));
        List<String> moves = Stream.concat(hands, feet).toList();
        return moves.isEmpty() ? Optional.empty() : Optional.of(String.join(words.text("and"), moves));
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

    private String side(Scene scene, Side side) {
        return scene.partner() ? words.of("side", side) : words.text("side.class");
    }

    /** Lines that hands close, where no parry has said so. */
    private List<String> closings(Scene scene) {
        List<String> said = new ArrayList<>();
        for (Side side : Side.values()) {
            scene.at(side)
                    .filter(aimed -> aimed.threat()
                            .filter(threat -> closes(threat, aimed) || aimed.carriedRound())
                            .isEmpty())
                    .ifPresent(aimed -> said.addAll(closing(side(scene, side), aimed.closing())));
        }
        return said;
    }

    private List<String> closing(String who, Closing closing) {
        if (!closing.known()) {
            return List.of(words.text("closing.unknown", who));
        }
        Set<Line> lines = closing.closed().isEmpty() ? closing.doubtful() : closing.closed();
        if (lines.isEmpty() || closing.by().isEmpty()) {
            return List.of();
        }
        String named = lines.stream()
                .sorted()
                .map(line -> words.of("line", line))
                .collect(Collectors.joining(words.text(closing.closed().isEmpty() ? "or" : "and")));
        return List.of(
                words.text("closing", who, words.of("position", closing.by().get()), named));
    }

    /** How they stand. */
    private String stand(Scene scene, Pose pose) {
        State state = scene.moment();
        if (pose instanceof Pose.Pair pair) {
            return words.text(
                    "stand",
                    person(state.leader(), pair.leader()),
                    person(state.follower(), pair.follower()),
                    (scene.stroke().isEmpty() ? blades(state) : "") + measure(state.measure()));
        }
        return words.text("stand.solo", person(state.follower(), ((Pose.Alone) pose).person()));
    }

    private String blades(State state) {
        return state.engagement()
                .value()
                .map(known -> known.map(contact -> words.of("line", contact.lineOf(Side.FOLLOWER)))
                        .map(line -> words.text("blades.engaged", line))
                        .orElseGet(() -> words.text("blades.apart")))
                .orElse("");
    }

    private String person(Fencer fencer, Person person) {
        String feet =
                fencer.feet().value().map(known -> words.of("feet", known)).orElseGet(() -> words.text("feet.unknown"));
        return feet
                + (fencer.extended().is(true) ? words.text("extended") : "")
                + (person.leftHanded() ? words.text("left.handed") : "");
    }

    private String measure(Range range) {
        if (!range.isKnown()) {
            return words.text("measure.unknown");
        }
        if (range.most() < 0) {
            return words.of("measure", Measure.CLOSE);
        }
        if (range.isOut()) {
            return words.of("measure", Measure.OUT);
        }
        if (range.isExact()) {
            return words.of("measure", Measure.of(range.least()));
        }
        return words.text("measure.unsure");
    }
}
