package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
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
    private record Shown(Scene scene, Pose pose, String gist) {

        static Shown standing(Replay replay, State state) {
            Scene scene = Scene.standing(replay.setting(), state);
            return new Shown(scene, Posing.of(scene), "");
        }
    }

    private Pictures() {}

    /** One for each count, in their order. */
    public static List<Picture> of(Replay replay, Language language) {
        Spoken spoken = new Spoken(language);
        List<Picture> pictures = new ArrayList<>();
        Shown before = Shown.standing(replay, State.atAttention());
        for (Count count : replay.counts()) {
            if (pictures.isEmpty()) {
                before = Shown.standing(replay, count.begin());
            }
            Scene scene = SceneReader.read(replay.setting(), count);
            Pose pose = Posing.of(scene);
            String gist = spoken.gist(scene, pose, before.gist());
            pictures.add(new Picture(scene, pose, spoken.alternative(scene, pose), gist, changes(scene, pose, before)));
            before = new Shown(scene, pose, gist);
        }
        return pictures;
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
        Shown shown = Shown.standing(replay, state);
        String said = new Spoken(language).alternative(shown.scene(), shown.pose());
        return new Picture(shown.scene(), shown.pose(), said, said, true);
    }
}
