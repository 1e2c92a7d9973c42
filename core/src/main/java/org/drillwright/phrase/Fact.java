package org.drillwright.phrase;

import java.util.Optional;
import java.util.function.Function;
import org.drillwright.wording.Message;

/**
 * A part of the state that is either known or not.
 *
 * @param value what is known
 * @param since where it became unknown, in words; empty if it is known
 */
public record Fact<T>(Optional<T> value, Message since) {

    /** It is the turn itself that does not say it. */
    public static final Message HERE = Where.HERE;

    public static <T> Fact<T> of(T value) {
        return new Fact<>(Optional.of(value), Message.none());
    }

    public static <T> Fact<T> unknown(Message since) {
        return new Fact<>(Optional.empty(), since);
    }

    public boolean isKnown() {
        return value.isPresent();
    }

    /** Whether it is known to be just this. */
    public boolean is(T wanted) {
        return value.isPresent() && value.get().equals(wanted);
    }

    public <R> Fact<R> map(Function<T, R> change) {
        return new Fact<>(value.map(change), since);
    }

    /** Known only where the change gives something; else unknown since here. */
    public <R> Fact<R> flatMap(Function<T, Optional<R>> change, Message here) {
        Optional<R> changed = value.flatMap(change);
        return new Fact<>(changed, changed.isPresent() ? Message.none() : since.isEmpty() ? here : since);
    }

    @Override
    public String toString() {
        return value.map(Object::toString).orElse("?");
    }
}
