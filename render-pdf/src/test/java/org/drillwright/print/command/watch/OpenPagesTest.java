package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.drillwright.print.command.watch.web.LoopbackServer;
import org.drillwright.print.command.watch.web.ServerSentEvents;
import org.junit.jupiter.api.Test;

/** The bound on pages open at once holds when all come in the same moment. */
class OpenPagesTest {

    private static final int MANY = 3 * ServerSentEvents.READERS;

    @Test
    void as_many_are_told_news_as_the_bound_says_and_who_goes_leaves_room() throws Exception {
        ServerSentEvents news = new ServerSentEvents();
        try (LoopbackServer server = LoopbackServer.open(0, (path, query) -> Optional.empty(), news, Locale.ENGLISH)) {
            for (int round = 0; round < 5; round++) {
                List<Socket> told = atOnce(server.address().getPort());
                assertEquals(ServerSentEvents.READERS, told.size(), "in round " + round);
                for (Socket socket : told) {
                    socket.close();
                }
                letThemBeMissed(news);
            }
        }
    }

    /** A page that is gone is noticed when it is told something: not the first time, which still goes out. */
    private static void letThemBeMissed(ServerSentEvents news) throws InterruptedException {
        for (int time = 0; time < 4; time++) {
            news.tell("anything");
            Thread.sleep(100);
        }
    }

    private static List<Socket> atOnce(int port) throws Exception {
        ExecutorService pages = Executors.newFixedThreadPool(MANY);
        CountDownLatch start = new CountDownLatch(MANY);
        List<Future<Socket>> asked = new ArrayList<>();
        Callable<Socket> page = () -> {
            Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
            start.countDown();
            start.await();
            socket.setSoTimeout(10_000);
            socket.getOutputStream()
                    .write(("GET /news HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return socket;
        };
        for (int at = 0; at < MANY; at++) {
            asked.add(pages.submit(page));
        }
        List<Socket> told = new ArrayList<>();
        for (Future<Socket> one : asked) {
            Socket socket = one.get();
            if (status(socket) == 200) {
                told.add(socket);
            } else {
                socket.close();
            }
        }
        pages.shutdown();
        return told;
    }

    private static int status(Socket socket) throws IOException {
        String line = new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
        return Integer.parseInt(line.substring(9));
    }
}
