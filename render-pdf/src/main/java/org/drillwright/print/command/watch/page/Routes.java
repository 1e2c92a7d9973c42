package org.drillwright.print.command.watch.page;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.print.command.live.LiveDrill;
import org.drillwright.print.command.live.LiveSchool;
import org.drillwright.print.command.live.SchoolUpdate;
import org.drillwright.print.command.live.Snapshot;
import org.drillwright.print.command.watch.web.Answer;
import org.drillwright.print.command.watch.web.Query;
import org.drillwright.print.command.watch.web.Site;
import org.drillwright.print.command.write.Skeleton;
import org.drillwright.print.frame.Face;
import org.drillwright.wording.Message;

/**
 * Everything that the page can ask for. A drill is asked for by its name in the list; no address is ever made into the
 * path of a file.
 */
public final class Routes implements Site {

    private static final String FONT = "font/ttf";

    private final LiveSchool live;
    private final Locale language;

    /** @param language in which it speaks */
    public Routes(LiveSchool live, Locale language) {
        this.language = language;
        this.live = live;
    }

    /** A change as the page is told of it: one line. */
    public static String news(SchoolUpdate change) {
        return SchoolJson.of(change);
    }

    @Override
    public Optional<Answer> answer(String path, Query query) {
        Snapshot school = live.now();
        return switch (path) {
            case "/" -> Optional.of(Answer.html(PageHtml.of(PageFiles.page(), language)));
            case "/said" -> Optional.of(Answer.json(SaidJson.of(language)));
            case "/school" -> Optional.of(Answer.json(SchoolJson.of(school, language)));
            case "/words" -> Optional.of(Answer.json(WordsJson.of(school.school(), language)));
            case "/example" -> Optional.of(Answer.plain(example(school)));
            case "/font/regular" -> Optional.of(Answer.of(FONT, school.faces().file(Face.REGULAR)));
            case "/font/bold" -> Optional.of(Answer.of(FONT, school.faces().file(Face.BOLD)));
            case "/drill" -> sheet(school, query).map(sheet -> Answer.json(DrillJson.of(school, sheet, language)));
            case "/card" ->
                sheet(school, query)
                        .flatMap(sheet -> new DrillSvg(school, language).card(sheet, number(query)))
                        .map(Answer::svg);
            case "/picture" ->
                sheet(school, query)
                        .flatMap(sheet -> picture(new DrillSvg(school, language), sheet, query))
                        .map(Answer::svg);
            case "/key" -> Optional.of(Answer.json(KeyJson.of(language)));
            case "/sign" -> new DrillSvg(school, language).sign(number(query)).map(Answer::svg);
            default -> PageFiles.at(path);
        };
    }

    private static Optional<LiveDrill> sheet(Snapshot school, Query query) {
        return query.text("name").flatMap(school::sheet);
    }

    private static Optional<String> picture(DrillSvg frames, LiveDrill sheet, Query query) {
        return query.text("between").isPresent()
                ? frames.between(sheet, number(query), query.number("between").orElse(0))
                : frames.picture(sheet, number(query));
    }

    private static int number(Query query) {
        return query.number("at").orElse(Integer.MAX_VALUE);
    }

    private static String example(Snapshot school) {
        String title = Message.of(Routes.class, "my.first.drill")
                .in(school.school().language().locale());
        return Skeleton.of(school.school(), title, Optional.empty(), false).text();
    }
}
