package org.drillwright.grammar;

import java.util.List;
import org.drillwright.lexicon.Features;

/** What heads mean with their arguments, as far as the chart has to know. */
public interface Sense<M> {

    /**
     * One meaning of a head with all its arguments.
     *
     * @param weight what it costs beside others, any number
     * @param trifle where nothing is meant, which kind of nothing: {@code none}, or a name of its own
     */
    record Sensed<M>(List<M> meant, double weight, String trifle) {
        public Sensed {
            meant = List.copyOf(meant);
        }

        public Sensed(List<M> meant, double weight) {
            this(meant, weight, "none");
        }
    }

    /** Whether these arguments could be part of something that the head means. */
    boolean mayTake(Features head, List<Argument<M>> arguments);

    /** What the head means with just these arguments, the cheapest first; empty if nothing. */
    List<Sensed<M>> of(Features head, List<Argument<M>> arguments);

    /** What a construction means by itself, by its name. */
    List<M> named(String name);

    /** The same, told as done when something else begins; what is told so already stays as it is. */
    List<M> had(List<M> meant);
}
