package org.drillwright.print.command.watch;

import java.io.IOException;
import java.net.BindException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.filewatch.FileWatcher;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.live.LiveSchool;
import org.drillwright.print.command.watch.page.Routes;
import org.drillwright.print.command.watch.web.LoopbackServer;
import org.drillwright.print.command.watch.web.ServerSentEvents;
import org.drillwright.wording.Message;

/** A folder being watched and its page being served, until closed. */
final class WatchSession implements AutoCloseable {

    private final LoopbackServer server;
    private final FileWatcher watcher;

    private WatchSession(LoopbackServer server, FileWatcher watcher) {
        this.server = server;
        this.watcher = watcher;
    }

    /**
     * Begins to watch a folder.
     *
     * @param port 0 for any that is free
     * @param language in which the page speaks
     */
    public static WatchSession start(Path root, int port, Locale language) {
        ServerSentEvents news = new ServerSentEvents();
        LiveSchool school = school(root);
        LoopbackServer server = server(port, new Routes(school, language), news, language);
        FileWatcher watcher =
                FileWatcher.start(root, () -> school.look().ifPresent(change -> news.tell(Routes.news(change))));
        return new WatchSession(server, watcher);
    }

    private static LiveSchool school(Path root) {
        try {
            return LiveSchool.open(root);
        } catch (IOException problem) {
            throw Schools.unreadable(root, problem);
        }
    }

    private static LoopbackServer server(int port, Routes pages, ServerSentEvents news, Locale language) {
        try {
            return LoopbackServer.open(port, pages, news, language);
        } catch (BindException taken) {
            throw new CannotRun(Message.of(WatchSession.class, "watching.port.is.taken.or", port));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(WatchSession.class, "watching.the.page.cannot.be"), problem);
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
