package org.drillwright.notation;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where a point or an edge is sent, as far as the words say. */
public record Aim(Optional<Height> height, Optional<Width> width, Optional<Target> target) {

    public static final Aim UNSTATED = new Aim(Optional.empty(), Optional.empty(), Optional.empty());

    public static Aim at(Line line) {
        return new Aim(line.height(), line.width(), line == Line.HEAD ? Optional.of(Target.HEAD) : Optional.empty());
    }

    public static Aim at(Target target) {
        return new Aim(Optional.empty(), Optional.empty(), Optional.of(target));
    }

    public boolean isStated() {
        return height.isPresent() || width.isPresent() || target.isPresent();
    }

    /** Whether both may be said of one stroke: 'low' and 'at the thigh'. */
    public boolean agreesWith(Aim other) {
        return agree(height, other.height) && agree(width, other.width) && agree(target, other.target);
    }

    private static <T> boolean agree(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /** This aim, completed by what the other says. */
    public Aim completedBy(Aim other) {
        return new Aim(height.or(other::height), width.or(other::width), target.or(other::target));
    }

    @Override
    public String toString() {
        return Stream.of(height.map(Height::name), width.map(Width::name), target.map(Target::name))
                .flatMap(Optional::stream)
                .map(word -> word.toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(" "));
    }
}
