package org.drillwright.print.diagram;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.print.diagram.stage.LegendSign;
import org.drillwright.wording.Message;

/** What the signs in pictures mean, each beside the sign as it is drawn there. */
public final class Legend {

    private Legend() {}

    public static List<Sample> in(Language language) {
        return Stream.of(LegendSign.values())
                .map(sign -> new Sample(
                        Message.of(Legend.class, "legend." + sign.name().toLowerCase(Locale.ROOT))
                                .in(language.locale()),
                        sign))
                .toList();
    }
}
