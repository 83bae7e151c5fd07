package depot.optimizer.report.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;

/** The bytes of a workbook, the same for the same content: the library writes the time of writing, which is taken out again. */
final class WorkbookBytes {

    private static final String APPLICATION = "Depot charging optimiser";
    private static final String VERSION = "1.0";
    private static final String PROPERTIES = "docProps/core.xml";
    private static final String WORKBOOK = "xl/workbook.xml";

    /** Formulas are written without what they come to: whoever opens the file is to work them out. */
    private static final String RECALCULATE = "<calcPr fullCalcOnLoad=\"1\"/>";

    /** Stands for every time of writing; zip files know none before 1980. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(2000, 1, 1, 0, 0);

    private WorkbookBytes() {}

    /** A workbook with the content that is put into it. */
    static byte[] of(Consumer<Workbook> content) {
        try {
            Path file = Files.createTempFile("workbook", ".xlsx");
            try {
                write(file, content);
                return timeless(file);
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, Consumer<Workbook> content) throws IOException {
        try (OutputStream stream = Files.newOutputStream(file);
                Workbook workbook = new Workbook(stream, APPLICATION, VERSION)) {
            content.accept(workbook);
            workbook.finish();
        }
    }

    /** From a file, as the library writes sizes of parts where only a reader of whole files finds them. */
    private static byte[] timeless(Path file) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipFile from = new ZipFile(file.toFile());
                ZipOutputStream to = new ZipOutputStream(bytes)) {
            for (ZipEntry part : Collections.list(from.entries())) {
                ZipEntry copy = new ZipEntry(part.getName());
                copy.setTimeLocal(ALWAYS);
                to.putNextEntry(copy);
                byte[] content = from.getInputStream(part).readAllBytes();
                to.write(mended(part.getName(), content));
                to.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] mended(String part, byte[] content) {
        return switch (part) {
            case PROPERTIES -> replaced(content, "(<dcterms:created[^>]*>)[^<]*", "$1" + ALWAYS + ":00Z");
            case WORKBOOK -> replaced(content, "<definedNames></definedNames>", RECALCULATE);
            default -> content;
        };
    }

    private static byte[] replaced(byte[] content, String pattern, String replacement) {
        String text = new String(content, StandardCharsets.UTF_8);
        return text.replaceFirst(pattern, replacement).getBytes(StandardCharsets.UTF_8);
    }
}
