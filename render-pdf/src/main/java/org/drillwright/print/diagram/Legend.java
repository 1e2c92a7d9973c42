package org.drillwright.print.diagram;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.print.diagram.stage.Sign;

/** What the signs in pictures mean, each beside the sign as it is drawn there. */
public final class Legend {

    private Legend() {}

    public static List<Sample> in(Language language) {
        Words words = Words.in(language);
        return Stream.of(Sign.values())
                .map(sign -> new Sample(words.text("legend." + sign.name().toLowerCase(Locale.ROOT)), sign))
                .toList();
    }
}
