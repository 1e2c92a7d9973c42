package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Requests that bring more than anybody asked for: they are refused or cut off, and the page goes on answering. */
class LargeRequestsTest {

    private static final int MEGABYTES = 20;

    @TempDir
    Path folder;

    private Visit visit;

    @BeforeEach
    void open() {
        SchoolFiles.sound(folder);
        visit = new Visit(folder);
    }

    @AfterEach
    void close() {
        visit.close();
    }

    private String host() {
        return "Host: 127.0.0.1:" + visit.port();
    }

    /** Sends a beginning and then one letter again and again; the status, or nothing if the line was cut. */
    private String flood(String beginning) throws IOException {
        byte[] letters = "x".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), visit.port())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(beginning.getBytes(StandardCharsets.US_ASCII));
            for (int sent = 0; sent < MEGABYTES; sent++) {
                socket.getOutputStream().write(letters);
            }
            return new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
        } catch (SocketException cut) {
            return "";
        }
    }

    private void assertStillThere() throws Exception {
        assertEquals(200, visit.get("/school").statusCode());
    }

    @Test
    void a_body_is_refused_unread() throws Exception {
        String status = flood("POST / HTTP/1.1\r\n" + host() + "\r\nContent-Length: " + (MEGABYTES << 20) + "\r\n\r\n");
        assertTrue(status.isEmpty() || status.endsWith("405"), status);
        assertStillThere();
    }

    @Test
    void a_header_without_an_end_is_cut_off() throws Exception {
        String status = flood("GET / HTTP/1.1\r\n" + host() + "\r\nX: ");
        assertFalse(status.endsWith("200"), status);
        assertStillThere();
    }

    @Test
    void an_address_of_a_hundred_thousand_letters_is_not_found() throws Exception {
        int status = new Line(visit.port()).status("GET /drill?name=" + "x".repeat(100_000) + " HTTP/1.1", host());
        assertTrue(status == 404 || status == 414 || status == 431 || status == 400, "status " + status);
        assertStillThere();
    }

    /** Not everybody who says that something comes sends it. */
    @Test
    void whoever_says_nothing_hinders_nobody() throws Exception {
        try (Socket one = new Socket(InetAddress.getLoopbackAddress(), visit.port());
                Socket two = new Socket(InetAddress.getLoopbackAddress(), visit.port())) {
            two.getOutputStream().write("GET / HT".getBytes(StandardCharsets.US_ASCII));
            assertStillThere();
            assertTrue(one.isConnected());
        }
    }
}
