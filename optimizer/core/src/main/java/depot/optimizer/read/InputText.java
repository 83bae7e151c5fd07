package depot.optimizer.read;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Consumer;

/** Turns the bytes of a file into text: UTF-8 only, a byte-order mark is dropped. */
final class InputText {
    private static final String SAVE_HINT = "save it as UTF-8 (in a spreadsheet: CSV UTF-8)";

    private InputText() {}

    /** The text, or empty after telling what is wrong. */
    static Optional<String> decode(String file, byte[] bytes, Consumer<ReadProblem> problems) {
        if (bytes.length >= 2 && startsWithUtf16Mark(bytes)) {
            problems.accept(ReadProblem.ofFile(file, "the file is UTF-16, not UTF-8", SAVE_HINT));
            return Optional.empty();
        }
        for (int index = 0; index < bytes.length; index++) {
            if (bytes[index] == 0) {
                int line = lineAt(bytes, index);
                problems.accept(ReadProblem.ofLine(file, line, "the file holds a zero byte", SAVE_HINT));
                return Optional.empty();
            }
        }
        ByteBuffer source = ByteBuffer.wrap(bytes);
        CharBuffer target = CharBuffer.allocate(bytes.length + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(source, target, true);
        if (result.isError()) {
            int line = lineAt(bytes, source.position());
            problems.accept(ReadProblem.ofLine(file, line, "the line is not UTF-8 text", SAVE_HINT));
            return Optional.empty();
        }
        String text = target.flip().toString();
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private static boolean startsWithUtf16Mark(byte[] bytes) {
        int first = bytes[0] & 0xff;
        int second = bytes[1] & 0xff;
        return (first == 0xff && second == 0xfe) || (first == 0xfe && second == 0xff);
    }

    private static int lineAt(byte[] bytes, int end) {
        int line = 1;
        for (int index = 0; index < end; index++) {
            if (bytes[index] == '\n') {
                line++;
            }
        }
        return line;
    }
}
