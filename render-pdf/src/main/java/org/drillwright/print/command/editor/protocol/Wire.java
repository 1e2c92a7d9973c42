package org.drillwright.print.command.editor.protocol;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.MessageIssueException;
import org.eclipse.lsp4j.jsonrpc.RemoteEndpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.json.StreamMessageConsumer;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;
import org.eclipse.lsp4j.jsonrpc.services.ServiceEndpoints;
import org.eclipse.lsp4j.jsonrpc.validation.ReflectiveMessageValidator;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** The pipe to an editor. Whatever comes out of it is read within bounds and answered; what cannot be read is not kept. */
final class Wire {

    /** From whom a message comes that could not be read. */
    private static final Message NOBODY = new ResponseMessage();

    private final HeaderFraming frames;
    private final MessageConsumer editor;
    private final MessageJsonHandler json;
    private final RemoteEndpoint endpoint;
    private final LanguageClient client;
    private final ReflectiveMessageValidator validator = new ReflectiveMessageValidator();

    Wire(InputStream in, OutputStream out, LanguageServer server) {
        Map<String, JsonRpcMethod> methods = new HashMap<>(ServiceEndpoints.getSupportedMethods(LanguageServer.class));
        methods.putAll(ServiceEndpoints.getSupportedMethods(LanguageClient.class));
        this.frames = new HeaderFraming(in);
        this.json = new MessageJsonHandler(methods);
        this.editor = new StreamMessageConsumer(new BufferedOutputStream(out), json);
        this.endpoint = new RemoteEndpoint(editor, ServiceEndpoints.toEndpoint(server), Wire::error);
        this.client = ServiceEndpoints.toServiceObject(endpoint, LanguageClient.class);
        endpoint.setJsonHandler(json);
        json.setMethodProvider(endpoint);
    }

    LanguageClient client() {
        return client;
    }

    /** Takes one message after the other until the pipe ends, or until nobody can tell where the next one begins. */
    void listen() {
        try {
            for (Optional<String> frame = frames.next(); frame.isPresent(); frame = frames.next()) {
                take(frame.get());
            }
        } catch (HeaderFraming.Unreadable broken) {
            client.showMessage(new MessageParams(
                    MessageType.Error, broken.getMessage() + " Drillwright ends; start it again from the editor."));
        } catch (IOException closed) {
            // The pipe is as good as closed.
        }
    }

    private void take(String text) {
        if (isTooDeep(text)) {
            refuse(NOBODY, ResponseErrorCode.ParseError, "Lists and objects stand too deep in one another.");
            return;
        }
        try {
            Message message = Optional.ofNullable(json.parseMessage(text)).orElseThrow(IllegalArgumentException::new);
            Optional<ResponseError> refusal =
                    message instanceof RequestMessage request ? refusal(request) : Optional.empty();
            if (refusal.isPresent()) {
                refuse(message, refusal.get());
            } else {
                endpoint.consume(message);
            }
        } catch (MessageIssueException issue) {
            refuse(issue.getRpcMessage(), ResponseErrorCode.ParseError, "This message could not be read.");
        } catch (RuntimeException unreadable) {
            refuse(NOBODY, ResponseErrorCode.ParseError, "This message could not be read.");
        }
    }

    /** Why a question is not worth asking. How an editor begins is not looked at so closely: it may say less than it should. */
    private Optional<ResponseError> refusal(RequestMessage request) {
        JsonRpcMethod method = request.getMethod() == null ? null : json.getJsonRpcMethod(request.getMethod());
        if (request.getMethod() == null) {
            return Optional.of(new ResponseError(ResponseErrorCode.InvalidRequest, "This asks for nothing.", null));
        }
        if (method == null) {
            return Optional.of(unknown());
        }
        boolean lacks = method.getParameterTypes().length > 0 && request.getParams() == null;
        boolean sound = request.getMethod().equals("initialize") || validator.isValid(request.getParams());
        return lacks || !sound
                ? Optional.of(new ResponseError(
                        ResponseErrorCode.InvalidParams, "Something that this has to say is missing.", null))
                : Optional.empty();
    }

    private static ResponseError unknown() {
        return new ResponseError(ResponseErrorCode.MethodNotFound, "This is nothing that Drillwright does.", null);
    }

    private void refuse(Message message, ResponseErrorCode code, String why) {
        refuse(message, new ResponseError(code, why, null));
    }

    /** An error goes to whoever asked; one about what nobody can tell from whom it came bears no number (JSON-RPC 2.0, 5). */
    private void refuse(Message message, ResponseError error) {
        if (message instanceof NotificationMessage) {
            return;
        }
        ResponseMessage answer = new ResponseMessage();
        if (message instanceof RequestMessage request) {
            answer.setRawId(request.getRawId());
        }
        answer.setError(error);
        editor.consume(answer);
    }

    /** Looked at before the text is read, since reading takes a frame of the thread's stack for each. */
    private static boolean isTooDeep(String text) {
        int depth = 0;
        boolean quoted = false;
        for (int at = 0; at < text.length() && depth <= HeaderFraming.DEEPEST; at++) {
            char sign = text.charAt(at);
            if (quoted && sign == '\\') {
                at++;
            } else if (sign == '"') {
                quoted = !quoted;
            } else if (!quoted && (sign == '{' || sign == '[')) {
                depth++;
            } else if (!quoted && (sign == '}' || sign == ']')) {
                depth--;
            }
        }
        return depth > HeaderFraming.DEEPEST;
    }

    /** A fault of ours is named, and nothing of what it was about. */
    private static ResponseError error(Throwable problem) {
        Throwable cause =
                problem instanceof CompletionException && problem.getCause() != null ? problem.getCause() : problem;
        if (cause instanceof ResponseErrorException refused) {
            return refused.getResponseError();
        }
        return cause instanceof UnsupportedOperationException
                ? unknown()
                : new ResponseError(
                        ResponseErrorCode.InternalError,
                        "A fault in Drillwright itself (" + cause.getClass().getSimpleName() + ").",
                        null);
    }
}
