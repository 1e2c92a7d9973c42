package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Posing;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.SceneReader;

/** The pictures of a drill. */
public final class Pictures {

    /** What a picture shows, so that the next one can tell what is new. */
    private record Shown(Scene scene, Pose pose) {

        static Shown of(Scene scene) {
            return new Shown(scene, Posing.of(scene));
        }

        static Shown standing(Replay replay, State state) {
            return of(Scene.standing(replay.setting(), state));
        }
    }

    private Pictures() {}

    /** One for each count, in their order. */
    public static List<Picture> of(Replay replay, Language language) {
        Caption spoken = new Caption(language);
        Once gists = new Once(language);
        Once alternatives = new Once(language);
        List<Picture> pictures = new ArrayList<>();
        Shown before = Shown.standing(replay, State.atAttention());
        for (Count count : replay.counts()) {
            if (pictures.isEmpty()) {
                before = Shown.standing(replay, count.begin());
            }
            int number = pictures.size() + 1;
            Shown shown = Shown.of(SceneReader.read(replay.setting(), count));
            List<Picture> strokes = strokes(replay, count, spoken);
            pictures.add(new Picture(
                    shown.scene(),
                    shown.pose(),
                    alternatives.said(alternative(strokes, shown, spoken), number),
                    gists.said(gist(strokes, shown, spoken), number),
                    changes(shown.scene(), shown.pose(), before),
                    strokes));
            before = shown;
        }
        return pictures;
    }

    private static String gist(List<Picture> strokes, Shown shown, Caption spoken) {
        return strokes.isEmpty() ? spoken.gist(shown.scene(), shown.pose()) : gists(strokes);
    }

    private static String alternative(List<Picture> strokes, Shown shown, Caption spoken) {
        int last = strokes.size() - 1;
        return strokes.isEmpty()
                ? spoken.alternative(shown.scene(), shown.pose())
                : gists(strokes.subList(0, last)) + " " + strokes.get(last).alternative();
    }

    private static String gists(List<Picture> strokes) {
        return strokes.stream().map(Picture::gist).collect(Collectors.joining(" "));
    }

    /** Of a count that holds several. */
    private static List<Picture> strokes(Replay replay, Count count, Caption spoken) {
        List<Scene> scenes = SceneReader.strokes(replay.setting(), count);
        return scenes.size() < 2
                ? List.of()
                : scenes.stream()
                        .map(Shown::of)
                        .map(shown -> picture(shown, spoken))
                        .toList();
    }

    private static Picture picture(Shown shown, Caption spoken) {
        Scene scene = shown.scene();
        Pose pose = shown.pose();
        return new Picture(scene, pose, spoken.alternative(scene, pose), spoken.gist(scene, pose), true, List.of());
    }

    /** Feet that moved are an arrow, new in each count; an arrow of the count before that is gone tells nothing. */
    private static boolean changes(Scene scene, Pose pose, Shown before) {
        return !pose.feet().isEmpty()
                || !still(pose).equals(still(before.pose()))
                || !scene.aimed().equals(before.scene().aimed());
    }

    private static Pose still(Pose pose) {
        if (pose instanceof Pose.Pair pair) {
            return new Pose.Pair(
                    pair.weapon(),
                    pair.leader(),
                    pair.follower(),
                    pair.measure(),
                    pair.meeting(),
                    pair.ways(),
                    List.of());
        }
        Pose.Alone alone = (Pose.Alone) pose;
        return new Pose.Alone(alone.weapon(), alone.person(), alone.pad(), alone.hit(), alone.ways(), List.of());
    }

    /** How the two stand in a state, without any stroke. */
    public static Picture standing(Replay replay, State state, Language language) {
        return picture(Shown.standing(replay, state), new Caption(language));
    }
}
