package org.drillwright.print.command.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.http.HttpHeaders;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.console.CannotRun;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is answered, and with what manners. */
class ServedTest {

    private static final List<String> SCRIPTS = List.of(
            "/page.js",
            "/said.js",
            "/elements.js",
            "/list.js",
            "/lines.js",
            "/phrase.js",
            "/pictures.js",
            "/motion.js",
            "/steady.js",
            "/cards.js",
            "/key.js",
            "/words.js");

    @TempDir
    static Path temporary;

    private static Visit visit;

    @BeforeAll
    static void open() {
        Path folder = temporary.resolve("school");
        SchoolFiles.sound(folder);
        new SchoolFiles(temporary).with("outside.yaml", SchoolFiles.riposte());
        visit = new Visit(folder);
    }

    @AfterAll
    static void close() {
        visit.close();
    }

    private static Line line() {
        return new Line(visit.port());
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1:", "localhost:", "LOCALHOST:", "[::1]:"})
    void its_own_names_are_answered(String name) throws Exception {
        assertEquals(200, line().status("GET / HTTP/1.1", "Host: " + name + visit.port()));
    }

    @ParameterizedTest
    @CsvSource({
        "Host: evil.example:PORT",
        "Host: 127.0.0.1.evil.example:PORT",
        "Host: localhost.evil.example:PORT",
        "Host: 127.0.0.1",
        "Host: localhost",
        "Host: 127.0.0.1:1",
        "Host: 0.0.0.0:PORT",
        "Host: 127.0.0.2:PORT",
        "Host: user@127.0.0.1:PORT",
        "X-Forwarded-Host: 127.0.0.1:PORT"
    })
    void other_names_are_not(String header) throws Exception {
        String sent = header.replace("PORT", String.valueOf(visit.port()));
        for (String path : List.of("/", "/school", "/news", "/page.js")) {
            String answer = line().send("GET " + path + " HTTP/1.1", sent);
            assertTrue(answer.startsWith("HTTP/1.1 403 "), answer);
            assertFalse(answer.contains("Saltmarsh"), answer);
        }
    }

    @Test
    void two_names_or_a_whole_address_are_no_name() throws Exception {
        String own = "127.0.0.1:" + visit.port();
        assertEquals(403, line().status("GET / HTTP/1.1", "Host: " + own, "Host: evil.example"));
        assertEquals(403, line().status("GET http://evil.example/ HTTP/1.1", "Host: " + own));
    }

    @Test
    void only_this_computer_is_bound_to() throws Exception {
        for (NetworkInterface network : NetworkInterface.networkInterfaces().toList()) {
            for (InetAddress address : network.inetAddresses().toList()) {
                if (!address.isLoopbackAddress()) {
                    assertThrows(java.io.IOException.class, () -> new Socket(address, visit.port()).close());
                }
            }
        }
        assertTrue(visit.address().startsWith("http://127.0.0.1:"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/page.css", "/page.js", "/school", "/words", "/example", "/font/bold", "/nothing"})
    void every_answer_has_its_manners(String path) throws Exception {
        HttpHeaders headers = visit.get(path).headers();
        String content = headers.firstValue("Content-Security-Policy").orElseThrow();
        assertTrue(content.startsWith("default-src 'none'; script-src 'self'; "), content);
        assertFalse(content.contains("unsafe"), content);
        assertTrue(content.contains("frame-ancestors 'none'"), content);
        assertEquals("nosniff", headers.firstValue("X-Content-Type-Options").orElseThrow());
        assertEquals("no-referrer", headers.firstValue("Referrer-Policy").orElseThrow());
        assertEquals("no-store", headers.firstValue("Cache-Control").orElseThrow());
        assertTrue(headers.firstValue("Access-Control-Allow-Origin").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "HEAD", "TRACE"})
    void only_get_is_answered(String method) throws Exception {
        assertEquals(405, line().status(method + " / HTTP/1.1", "Host: 127.0.0.1:" + visit.port()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nothing",
                "/page.js/",
                "/school.yaml",
                "/riposte.yaml",
                "/../outside.yaml",
                "/%2e%2e/outside.yaml",
                "/..%2foutside.yaml",
                "/page.html",
                "/drill",
                "/drill?name=",
                "/drill?name=../outside.yaml",
                "/drill?name=..%2Foutside.yaml",
                "/drill?name=%2Fetc%2Fpasswd",
                "/drill?name=school.yaml",
                "/drill?name=feet/../riposte.yaml",
                "/drill?name=%ZZ",
                "/card?name=riposte.yaml",
                "/card?name=riposte.yaml&at=-1",
                "/card?name=riposte.yaml&at=7",
                "/card?name=riposte.yaml&at=99999999999",
                "/picture?name=riposte.yaml&at=5",
                "/picture?name=riposte.yaml&at=0&between=0",
                "/picture?name=riposte.yaml&at=0&between=99",
                "/picture?name=riposte.yaml&at=0&between=x",
                "/picture?name=riposte.yaml&at=4&between=1",
                "/sign?at=99",
                "/sign"
            })
    void what_is_not_there_is_not_found(String path) throws Exception {
        int status = line().status("GET " + path + " HTTP/1.1", "Host: 127.0.0.1:" + visit.port());
        // What is no address at all is refused before we see it.
        assertTrue(status == 404 || (path.contains("%ZZ") && status == 400), path + ": " + status);
    }

    @Test
    void what_is_there_is_found() throws Exception {
        assertTrue(visit.get("/school").body().contains("\"name\":\"feet/steps.yaml\""));
        assertTrue(visit.drill("riposte.yaml").contains("\"title\":\"Parry of quarte, straight riposte\""));
        assertEquals(200, visit.get("/picture?name=riposte.yaml&at=4").statusCode());
        assertEquals(200, visit.get("/picture?name=riposte.yaml&at=0&between=1").statusCode());
        assertEquals(200, visit.get("/sign?at=0").statusCode());
        assertTrue(visit.get("/key").body().startsWith("{\"signs\":["));
        assertEquals(
                "image/svg+xml; charset=utf-8",
                visit.get("/card?name=riposte.yaml&at=0")
                        .headers()
                        .firstValue("Content-Type")
                        .orElseThrow());
    }

    @Test
    void the_page_holds_no_script_and_no_style_of_its_own_and_fetches_nothing_from_elsewhere() throws Exception {
        String page = visit.get("/").body();
        assertFalse(page.matches("(?s).*(<style|style=|<script(?! type=\"module\" src=\"/)|\\son[a-z]+=).*"), page);
        for (String file :
                Stream.concat(Stream.of("/", "/page.css"), SCRIPTS.stream()).toList()) {
            String body = visit.get(file).body();
            assertFalse(body.matches("(?s).*(https?:)?//[a-z0-9.-]+\\.[a-z]{2,}.*"), file);
        }
        for (String file : SCRIPTS) {
            assertFalse(
                    visit.get(file)
                            .body()
                            .matches("(?s).*(innerHTML|outerHTML|insertAdjacent|eval\\(|document.write).*"),
                    file);
        }
    }

    @Test
    void a_port_that_is_taken_is_said_in_a_sentence() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            CannotRun said = assertThrows(
                    CannotRun.class,
                    () -> WatchSession.start(temporary.resolve("school"), taken.getLocalPort(), Locale.ENGLISH));
            assertTrue(said.getMessage().contains("is taken"), said.getMessage());
        }
    }
}
