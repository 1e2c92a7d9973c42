package org.drillwright.print.command.classes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillwright.autofix.RosterRename;
import org.drillwright.plan.roster.Roster;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.planning.ClassRun;
import org.drillwright.print.command.planning.People;
import org.drillwright.print.command.planning.RecordAdding;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.register.Entry;
import org.drillwright.register.RecordWriter;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Writes down that somebody is called otherwise now, has left, or is back. */
@Command(name = "roster", sortOptions = false)
public final class RosterCommand extends PeopleCommand {

    @Option(names = "--rename", arity = "2", paramLabel = "NAME NEW", hideParamSyntax = true)
    List<String> renamed = List.of();

    @Option(names = "--left", paramLabel = "NAME")
    Optional<String> left = Optional.empty();

    @Option(names = "--back", paramLabel = "NAME")
    Optional<String> back = Optional.empty();

    @Option(names = "--date", paramLabel = "DATE")
    Optional<LocalDate> date = Optional.empty();

    public RosterCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (renamed.isEmpty() && left.isEmpty() && back.isEmpty()) {
            throw new CannotRun(Message.of(RosterCommand.class, "what.changed"));
        }
        if (renamed.size() > 2) {
            throw new CannotRun(Message.of(RosterCommand.class, "one.at.a.time"));
        }
        return withRoster(this::told);
    }

    private int told(ClassRun opened, Roster roster) {
        LocalDate day = date.orElseGet(run::today);
        List<Entry> facts = new ArrayList<>();
        List<Message> said = new ArrayList<>();
        Optional<Rename> rename = rename(opened, roster);
        rename.ifPresent(one -> {
            facts.add(Entry.renamed(day, one.old(), one.now()));
            said.add(Message.of(RosterCommand.class, "renamed", one.old(), one.now(), Message.day(day)));
        });
        left.ifPresent(typed -> {
            String person = new People(roster).name(typed);
            facts.add(Entry.left(day, person));
            said.add(Message.of(RosterCommand.class, "left", person, Message.day(day)));
        });
        back.ifPresent(typed -> {
            String person = opened.classes().members().gone().contains(typed) ? typed : new People(roster).name(typed);
            facts.add(Entry.returned(day, person));
            said.add(Message.of(RosterCommand.class, "back", person, Message.day(day)));
        });
        new RecordAdding(opened.classes()).add(read -> RecordWriter.told(read, facts));
        rename.ifPresent(one -> one.roster().run());
        said.forEach(run::say);
        return Exit.DONE;
    }

    /** @param roster writes the new name there */
    private record Rename(String old, String now, Runnable roster) {}

    private Optional<Rename> rename(ClassRun opened, Roster roster) {
        if (renamed.isEmpty()) {
            return Optional.empty();
        }
        String now = renamed.get(1).strip();
        boolean isNew = !roster.names().contains(now);
        if (!isNew && !roster.names().contains(renamed.get(0))) {
            return Optional.of(new Rename(renamed.get(0), now, () -> {}));
        }
        String old = new People(roster).name(renamed.get(0));
        if (!isNew || now.isEmpty()) {
            throw new CannotRun(
                    now.isEmpty()
                            ? Message.of(RosterCommand.class, "name.empty")
                            : Message.of(RosterCommand.class, "name.taken", now));
        }
        try {
            Path file = opened.classes()
                    .rosterFile()
                    .orElseThrow(() -> new CannotRun(Message.of(RosterCommand.class, "no.roster")));
            return Optional.of(rename(opened, file, old, now));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(RosterCommand.class, "roster.unreadable"), problem);
        }
    }

    private static Rename rename(ClassRun opened, Path file, String old, String now) throws IOException {
        String name = String.valueOf(file.getFileName());
        Message yourself = Message.of(RosterCommand.class, "rename.yourself", now, old);
        byte[] before = Files.readAllBytes(file);
        SourceFile source = new SourceFile(name, new String(before, StandardCharsets.UTF_8));
        if (!Arrays.equals(source.text().getBytes(StandardCharsets.UTF_8), before)) {
            throw new CannotRun(
                    Message.of(RosterCommand.class, "roster.encoding", name).then(yourself));
        }
        String text = RosterRename.of(opened.classes().rosterReader(), source, old, now)
                .orElseThrow(() -> new CannotRun(
                        Message.of(RosterCommand.class, "not.renamed", name).then(yourself)));
        return new Rename(old, now, () -> new WholeFile(file).replace(before, text));
    }
}
