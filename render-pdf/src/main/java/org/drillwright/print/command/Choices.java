package org.drillwright.print.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.model.CardSize;
import org.drillwright.model.Hands;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.classes.TableFormat;
import org.drillwright.print.command.classes.WalkForm;
import org.drillwright.print.command.classes.WallForm;
import org.drillwright.print.command.console.TextFormat;
import org.drillwright.print.command.documents.Binding;
import org.drillwright.print.command.drills.ReportFormat;
import org.drillwright.print.command.printing.DuplexEdge;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.school.NamesCommand;
import org.drillwright.print.command.school.SchemaCommand;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.layout.words.Back;
import picocli.CommandLine;

/** The arguments that are one of a few words, and their words. */
public final class Choices {

    private static final Map<Class<?>, ChoiceConverter<?>> ALL = new LinkedHashMap<>();

    static {
        put(ReportFormat.class, ReportFormat::word);
        put(SchemaCommand.Kind.class, SchemaCommand.Kind::word);
        put(NamesCommand.Kind.class, NamesCommand.Kind::word);
        put(Hands.class, Hands::word);
        ALL.put(Language.class, new ChoiceConverter<>(Language.all(), Language::word));
        put(CardSize.class, CardSize::word);
        put(SheetSize.class, SheetSize::word);
        put(PaperChoice.class, PaperChoice::word);
        put(Binding.class, Binding::word);
        put(Back.class, back -> back.name().toLowerCase(Locale.ROOT));
        put(DuplexEdge.class, DuplexEdge::word);
        put(Laminate.class, laminate -> laminate.name().toLowerCase(Locale.ROOT));
        put(TextFormat.class, TextFormat::word);
        put(WalkForm.class, WalkForm::word);
        put(WallForm.class, WallForm::word);
        put(TableFormat.class, TableFormat::word);
    }

    private Choices() {}

    private static <T> void put(Class<T> kind, Function<T, String> word) {
        ALL.put(kind, ChoiceConverter.of(kind.getEnumConstants(), word));
    }

    /** Lets the command line read them. */
    static void register(CommandLine line) {
        ALL.forEach((kind, choice) -> register(line, kind, choice));
    }

    /** Each choice stands beside its own kind in the map. */
    @SuppressWarnings("unchecked")
    private static <T> void register(CommandLine line, Class<T> kind, ChoiceConverter<?> choice) {
        line.registerConverter(kind, (ChoiceConverter<T>) choice);
    }

    /** The words that an argument of this kind may be; none if it may be anything. */
    public static Optional<List<String>> words(Class<?> kind) {
        return Optional.ofNullable(ALL.get(kind)).map(ChoiceConverter::words);
    }
}
