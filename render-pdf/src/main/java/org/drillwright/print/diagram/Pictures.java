package org.drillwright.print.diagram;

import java.util.List;
import org.drillwright.model.Language;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.SceneReader;

/** The pictures of a drill. */
public final class Pictures {

    private Pictures() {}

    /** One for each count, in their order. */
    public static List<Picture> of(Replay replay, Language language) {
        Spoken spoken = new Spoken(language);
        return replay.counts().stream()
                .map(count -> SceneReader.read(replay.setting(), count))
                .map(scene -> new Picture(scene, spoken.lines(scene), spoken.plan(scene)))
                .toList();
    }

    /** How the two stand in a state, without any stroke. */
    public static Picture standing(Replay replay, State state, Language language) {
        Scene scene = Scene.standing(replay.setting(), state);
        return new Picture(scene, "", new Spoken(language).plan(scene));
    }
}
