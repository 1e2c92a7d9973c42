package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How long the program takes from nothing, in ratios to a Java that starts and ends, and what each measure gives. */
final class StartFigures {

    private static final String CLIENT = "-XX:TieredStopAtLevel=1";
    private static final String SERIAL = "-XX:+UseSerialGC";

    private final Bench bench;
    private final Page page;

    private StartFigures(Bench bench, Page page) {
        this.bench = bench;
        this.page = page;
    }

    static void measure(Bench bench, Page page, CopiedSchool one, CopiedSchool fifty)
            throws IOException, InterruptedException {
        page.line("");
        page.line("### Starting");
        page.line("");
        page.line("Java " + System.getProperty("java.version") + ", " + System.getProperty("java.vm.name") + ".");
        StartFigures figures = new StartFigures(bench, page);
        figures.measure(
                "`check` of " + fifty.drills() + " drills",
                "check",
                "--school",
                fifty.folder().toString());
        figures.measure(
                "`cards` of one drill", "cards", "--school", one.folder().toString(), "--out", "one.pdf");
    }

    private void measure(String what, String... arguments) throws IOException, InterruptedException {
        Path archive = archive(arguments);
        String shared = "-XX:SharedArchiveFile=" + archive;
        List<Contender> all = new ArrayList<>();
        all.add(new Cold(
                "Java that does nothing", bench.work(), Bench.java(bench.jars().bench(), Empty.class)));
        all.add(program("the archive as it is", List.of(), arguments));
        all.add(program("`" + CLIENT + "`", List.of(CLIENT), arguments));
        all.add(program("`" + SERIAL + "`", List.of(SERIAL), arguments));
        all.add(program("both", List.of(CLIENT, SERIAL), arguments));
        all.add(program("shared classes", List.of(shared, "-Xshare:auto"), arguments));
        all.add(program("shared classes and both", List.of(shared, "-Xshare:auto", CLIENT, SERIAL), arguments));
        bench.image()
                .ifPresentOrElse(
                        image -> {
                            List<String> command = new ArrayList<>(List.of(image.toString()));
                            command.addAll(List.of(arguments));
                            all.add(new Cold("packed image", bench.work(), command));
                        },
                        () -> page.line("No packed image was named with `-Dimage=`; it is left out."));
        page.table(what, "ms", "to a Java that does nothing, by the clock", "by the processor");
        Turns turns = Turns.of(all, bench.rounds());
        for (String name : turns.names()) {
            page.row(
                    name,
                    turns.clock(name).each(1),
                    turns.clockRatio(name).times(),
                    turns.processorRatio(name).times());
        }
    }

    /** The classes that the command loads, as Java's own archive of them. */
    private Path archive(String... arguments) throws IOException, InterruptedException {
        Path archive = bench.file(arguments[0] + ".jsa");
        program("archive", List.of("-XX:ArchiveClassesAtExit=" + archive), arguments)
                .run();
        return archive;
    }

    private Contender program(String name, List<String> options, String... arguments) {
        List<String> command = new ArrayList<>(List.of(Bench.java()));
        command.addAll(options);
        command.addAll(List.of("-jar", bench.jars().runnable().toString()));
        command.addAll(List.of(arguments));
        return new Cold(name, bench.work(), command);
    }
}
