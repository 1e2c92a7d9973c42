package org.drillwright.print.command.editor.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What comes over the wire byte by byte, written and read here without a library for it (LSP 3.17, Base Protocol; codes of
 * errors: JSON-RPC 2.0, 5.1, and LSP 3.17, ErrorCodes).
 */
class WireTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String GREETING =
            framed("{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"capabilities\":{}}}");
    private static final String FAREWELL = framed("{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}")
            + framed("{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");

    /** What a talk came to: whether it ended as it should, and what was answered. */
    private record Talk(boolean sound, List<JsonNode> answers) {

        static Talk of(String said) {
            return of(new ByteArrayInputStream(said.getBytes(StandardCharsets.UTF_8)));
        }

        static Talk of(InputStream said) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            boolean sound = Session.hold(said, out, editors -> Locale.ENGLISH);
            try {
                return new Talk(sound, read(out.toByteArray()));
            } catch (IOException unreadable) {
                throw new AssertionError(out.toString(StandardCharsets.UTF_8), unreadable);
            }
        }

        private static List<JsonNode> read(byte[] bytes) throws IOException {
            ByteArrayInputStream in = new ByteArrayInputStream(bytes);
            List<JsonNode> answers = new ArrayList<>();
            while (in.available() > 0) {
                StringBuilder head = new StringBuilder();
                while (head.indexOf("\r\n\r\n") < 0) {
                    head.append((char) in.read());
                }
                assertTrue(head.toString().matches("Content-Length: [0-9]+\r\n\r\n"), head.toString());
                answers.add(JSON.readTree(
                        in.readNBytes(Integer.parseInt(head.toString().replaceAll("\\D", "")))));
            }
            return answers;
        }

        JsonNode last() {
            return answers.get(answers.size() - 1);
        }
    }

    private static String framed(String body) {
        return "Content-Length: " + body.getBytes(StandardCharsets.UTF_8).length + "\r\n\r\n" + body;
    }

    @Test
    void a_talk_is_answered_in_frames() {
        Talk talk = Talk.of(GREETING + FAREWELL);
        assertTrue(talk.sound());
        assertEquals(2, talk.answers().size());
        assertEquals(1, talk.answers().get(0).path("id").asInt());
        assertTrue(
                talk.answers().get(0).at("/result/capabilities/hoverProvider").asBoolean());
        assertTrue(talk.last().path("result").isNull() && talk.last().has("result"));
    }

    /** Fields of a head are those of HTTP (RFC 7230, 3.2): capitals make no difference, unknown ones are passed over. */
    @ParameterizedTest
    @ValueSource(strings = {"content-length", "CONTENT-LENGTH", "X-Other: 1\r\nContent-Length"})
    void heads_are_read_as_those_of_http(String name) {
        Talk talk = Talk.of(GREETING.replace("Content-Length", name) + FAREWELL);
        assertTrue(talk.sound());
        assertEquals(2, talk.answers().size());
    }

    @Test
    void a_message_may_come_in_single_bytes() {
        byte[] bytes = (GREETING + FAREWELL).getBytes(StandardCharsets.UTF_8);
        InputStream slow = new ByteArrayInputStream(bytes) {
            @Override
            public synchronized int read(byte[] into, int at, int length) {
                return super.read(into, at, Math.min(length, 1));
            }
        };
        assertTrue(Talk.of(slow).sound());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', quoteCharacter = '\u0001', textBlock = """
            {                                                                      ! -32700 ! null
            []                                                                     ! -32700 ! null
            null                                                                   ! -32700 ! null
            7 7                                                                    ! -32700 ! null
            {"jsonrpc":"2.0","id":9,"method":"textDocument/hover","params":7}      ! -32700 ! 9
            {"jsonrpc":"2.0","id":"a","method":"textDocument/hover","params":{}}   ! -32602 ! "a"
            {"jsonrpc":"2.0","id":9,"method":"textDocument/hover"}                 ! -32602 ! 9
            {"jsonrpc":"2.0","id":9,"method":"no/such","params":{}}                ! -32601 ! 9
            {"jsonrpc":"2.0","id":9,"method":"$/such"}                             ! -32601 ! 9
            {"jsonrpc":"2.0","id":9,"method":"workspace/symbol","params":{"query":""}} ! -32601 ! 9
            """)
    void whatIsNoQuestionIsAnsweredWithAnErrorAndTheTalkGoesOn(String body, int code, String id) throws IOException {
        Talk talk = Talk.of(GREETING + framed(body) + FAREWELL);
        assertTrue(talk.sound());
        assertEquals(3, talk.answers().size());
        JsonNode refused = talk.answers().stream()
                .filter(answer -> answer.has("error"))
                .findFirst()
                .orElseThrow();
        assertEquals(code, refused.at("/error/code").asInt());
        assertEquals(JSON.readTree(id), refused.get("id"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"jsonrpc\":\"2.0\",\"method\":\"no/such\"}",
                "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didChange\",\"params\":{}}",
                "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":7}",
                "{\"jsonrpc\":\"2.0\",\"method\":\"$/cancelRequest\",\"params\":{\"id\":\"zz\"}}",
                "{\"jsonrpc\":\"2.0\",\"id\":77,\"result\":{}}"
            })
    void whatWantsNoAnswerGetsNone(String body) {
        Talk talk = Talk.of(GREETING + framed(body) + FAREWELL);
        assertTrue(talk.sound());
        assertEquals(2, talk.answers().size());
    }

    @Test
    void a_message_of_endless_depth_is_refused() {
        String deep = "{\"jsonrpc\":\"2.0\",\"id\":9,\"method\":\"textDocument/hover\",\"params\":"
                + "{\"a\":".repeat(100_000) + "1" + "}".repeat(100_000) + "}";
        Talk talk = Talk.of(GREETING + framed(deep) + framed("[".repeat(100_000)) + FAREWELL);
        assertTrue(talk.sound());
        assertEquals(-32700, talk.answers().get(1).at("/error/code").asInt());
        assertEquals(-32700, talk.answers().get(2).at("/error/code").asInt());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            Content-Type: x%%                   ! A message came without its length.
            Hello%%                             ! What came is no message of the Language Server Protocol.
            GET / HTTP/1.1%Host: x%%            ! What came is no message of the Language Server Protocol.
            Content-Length: -5%%                ! The length of a message is no number.
            Content-Length: 16777217%%          ! A message has 16777217 bytes; 16777216 are the most.
            Content-Length: 99999999999999%%    ! A message has 99999999999999 bytes; 16777216 are the most.
            Content-Length: 9%Content-Length: 8%%  ! A message came with two lengths.
            """)
    void whereNoNextMessageCanBeFoundTheAuthorIsToldAndTheTalkEnds(String head, String told) {
        Talk talk = Talk.of(GREETING + head.replace("%", "\r\n") + "{}" + FAREWELL);
        assertEquals(false, talk.sound());
        assertEquals("window/showMessage", talk.last().path("method").asText());
        assertEquals(
                told + " Drillwright ends; start it again from the editor.",
                talk.last().at("/params/message").asText());
    }

    @Test
    void a_head_without_end_is_not_kept() {
        InputStream endless = new InputStream() {
            @Override
            public int read() {
                return 'A';
            }
        };
        Talk talk = Talk.of(endless);
        assertEquals(false, talk.sound());
        assertTrue(talk.last().at("/params/message").asText().startsWith("The head of a message is longer than 4096"));
    }

    @Test
    void a_pipe_that_ends_within_a_message_is_no_fault() {
        Talk talk = Talk.of(GREETING + "Content-Length: 500\r\n\r\n{\"jsonrpc\"");
        assertEquals(false, talk.sound());
        assertEquals(1, talk.answers().size());
    }
}
