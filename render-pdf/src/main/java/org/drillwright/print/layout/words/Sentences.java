package org.drillwright.print.layout.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.wording.Message;

/** What is said of problems, each written once. */
public final class Sentences {

    private Sentences() {}

    public static Message lacking(int codePoint) {
        String name = Character.getName(codePoint);
        String point = String.format(Locale.ROOT, "U+%04X", codePoint);
        return name == null
                ? Message.of(Sentences.class, "lacking.unassigned", point)
                : Message.of(Sentences.class, "lacking", point, name);
    }

    /**
     * All that proposes a larger card.
     *
     * @param any stands for what is told besides
     */
    public static List<Message> proposing(String larger, String any) {
        return List.of(
                Message.of(Sentences.class, "many.cards.larger", any, any, larger),
                Message.of(Sentences.class, "many.sheets.larger", any, any, larger),
                Message.of(Sentences.class, "too.long.larger", any, larger));
    }

    /** @param larger the smallest size that needs no more cards than are handy, if any */
    public static Message manyCards(int cards, CardSize size, Optional<CardSize> larger) {
        String key = size.isForTheWall() ? "many.sheets" : "many.cards";
        return larger.map(other -> Message.of(Sentences.class, key + ".larger", cards, size.word(), other.word()))
                .orElseGet(() -> Message.of(Sentences.class, key, cards, size.word()));
    }

    public static Message broken(String word) {
        return Message.of(Sentences.class, "broken", word);
    }

    /** @param larger the smallest size that holds it, if any */
    public static Message tooLong(CardSize size, Optional<CardSize> larger) {
        return larger.map(other -> Message.of(Sentences.class, "too.long.larger", size.word(), other.word()))
                .orElseGet(() -> Message.of(Sentences.class, "too.long", size.word()));
    }

    public static Message conductTooLong(CardSize size) {
        return Message.of(Sentences.class, "conduct.too.long", size.word());
    }

    public static Message backTooLong(CardSize size) {
        return Message.of(Sentences.class, "back.too.long", size.word());
    }
}
