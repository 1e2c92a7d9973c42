package org.drillwright.print.layout;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.fit.Scale;

/**
 * A composition at the largest scale that fits.
 *
 * @param shares the number of counts on each card
 */
record Fitting(Composition composition, List<Integer> shares) {

    /** After so many the search halves what is left, so that a drill that defies guessing does not take long. */
    private static final int GUESSES = 5;

    Fitting {
        shares = List.copyOf(shares);
    }

    /**
     * Searches from the floor up. Nothing if even the floor does not fit. A larger scale must need no more cards than
     * the floor does and break no word.
     */
    static Optional<Fitting> find(Function<Scale, Composition> composed, Scale floor) {
        Optional<Fitting> least = at(composed.apply(floor));
        return least.filter(made -> made.broken().isEmpty())
                .map(made -> made.largest(composed, floor))
                .or(() -> least);
    }

    /** Each scale to try is chosen by how much the one before left blank: most drills take three or four. */
    private Fitting largest(Function<Scale, Composition> composed, Scale floor) {
        Fitting best = this;
        int fits = 0;
        int tooLarge = floor.steps() + 1;
        int next = floor.stepsTo(floor.turn() * composition.growth(shares.size()));
        for (int tries = 1; tooLarge - fits > 1; tries++) {
            int step = tries <= GUESSES ? Math.max(fits + 1, Math.min(next, tooLarge - 1)) : (fits + tooLarge) / 2;
            Scale scale = floor.larger(step);
            Composition tried = composed.apply(scale);
            Optional<Fitting> made = at(tried).filter(this::isMatchedBy);
            if (made.isPresent()) {
                best = made.get();
                fits = step;
            } else {
                tooLarge = step;
            }
            next = floor.stepsTo(scale.turn() * tried.growth(shares.size()));
        }
        return best;
    }

    private boolean isMatchedBy(Fitting larger) {
        return larger.shares().size() <= shares.size() && larger.broken().isEmpty();
    }

    private static Optional<Fitting> at(Composition composition) {
        return composition.shares().map(shares -> new Fitting(composition, shares));
    }

    /** Whether it is one card without a broken word. */
    boolean isAtItsBest() {
        return shares.size() == 1 && broken().isEmpty();
    }

    /** Whether it needs no more cards than another and breaks no more words. */
    boolean isNoWorseThan(Fitting other) {
        return shares.size() <= other.shares().size()
                && broken().size() <= other.broken().size();
    }

    boolean hasPictures() {
        return composition.hasPictures();
    }

    List<Frame> cards() {
        return composition.cards(shares);
    }

    List<String> broken() {
        return composition.broken();
    }
}
