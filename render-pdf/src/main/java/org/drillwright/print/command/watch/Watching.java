package org.drillwright.print.command.watch;

import java.io.IOException;
import java.net.BindException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.live.Desk;
import org.drillwright.print.command.filewatch.Watcher;
import org.drillwright.print.command.watch.page.Pages;
import org.drillwright.print.command.watch.web.LoopbackServer;
import org.drillwright.print.command.watch.web.News;
import org.drillwright.wording.Message;

/** A folder being watched and its page being served, until closed. */
public final class Watching implements AutoCloseable {

    private final LoopbackServer server;
    private final Watcher watcher;

    private Watching(LoopbackServer server, Watcher watcher) {
        this.server = server;
        this.watcher = watcher;
    }

    /**
     * Begins to watch a folder.
     *
     * @param port 0 for any that is free
     * @param language in which the page speaks
     */
    public static Watching start(Path root, int port, Locale language) {
        News news = new News();
        Desk desk = desk(root);
        LoopbackServer server = server(port, new Pages(desk, language), news, language);
        Watcher watcher = Watcher.start(root, () -> desk.look().ifPresent(change -> news.tell(Pages.news(change))));
        return new Watching(server, watcher);
    }

    private static Desk desk(Path root) {
        try {
            return Desk.open(root);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(Watching.class, "watching.the.folder.cannot.be", root), problem);
        }
    }

    private static LoopbackServer server(int port, Pages pages, News news, Locale language) {
        try {
            return LoopbackServer.open(port, pages, news, language);
        } catch (BindException taken) {
            throw new CannotRun(Message.of(Watching.class, "watching.port.is.taken.or", port));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(Watching.class, "watching.the.page.cannot.be"), problem);
        }
    }

    /** Where the page is. */
    public String address() {
        return "http://127.0.0.1:" + server.address().getPort() + "/";
    }

    /** Where the page is when it shows a drill, named as in the school's folder. */
    public String address(String drill) {
        return address() + "#"
                + URLEncoder.encode(drill, StandardCharsets.UTF_8).replace("+", "%20");
    }

    @Override
    public void close() {
        watcher.close();
        server.close();
    }
}
