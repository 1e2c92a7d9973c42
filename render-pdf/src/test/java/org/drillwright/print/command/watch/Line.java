package org.drillwright.print.command.watch;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/** A bare connection, for requests that a well-mannered client would not send. */
record Line(int port) {

    /** Sends these lines and an empty one; the whole answer. */
    String send(String... lines) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(10_000);
            String request = String.join("\r\n", lines) + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The status of the answer. */
    int status(String... lines) throws IOException {
        return Integer.parseInt(send(lines).split(" ")[1]);
    }
}
