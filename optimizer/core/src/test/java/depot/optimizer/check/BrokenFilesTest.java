package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are not written as they should be. */
class BrokenFilesTest {
    @TempDir
    Path folder;

    private Finding only() {
        LoadedScenario loaded = ScenarioLoader.load(folder);
        assertThat(loaded.findings()).hasSize(1);
        assertThat(loaded.scenario()).isEmpty();
        return loaded.findings().get(0);
    }

    private void depots(byte[] bytes) throws IOException {
        tiny().write(folder);
        Files.write(folder.resolve("depots.csv"), bytes);
    }

    private static byte[] depots(String name, Charset charset) {
        return tiny().replace("depots.csv", "North yard", name)
                .text("depots.csv")
                .getBytes(charset);
    }

    @Test
    void aMissingFolderIsReported() throws IOException {
        Path missing = folder.resolve("nowhere");
        assertThat(ScenarioLoader.load(missing).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("does not exist"));
        Path file = Files.writeString(folder.resolve("file"), "");
        assertThat(ScenarioLoader.load(file).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("is not a folder"));
    }

    @Test
    void anEmptyFolderMissesEveryRequiredFile() {
        LoadedScenario loaded = ScenarioLoader.load(folder);
        assertThat(loaded.findings())
                .extracting(Finding::file)
                .contains("scenario.json", "depots.csv", "stops.csv")
                .doesNotContain("owned.csv");
    }

    @Test
    void aMissingTableIsReported() {
        Breach.in(tiny().without("tools.csv")).isOnlyError("tools.csv:0:", "", "the file is missing");
        Breach.in(tiny().without("scenario.json")).isOnlyError("scenario.json:0:", "", "the file is missing");
    }

    @Test
    void aFolderInPlaceOfATableIsReported() throws IOException {
        tiny().without("tools.csv").write(folder);
        Files.createDirectory(folder.resolve("tools.csv"));
        assertThat(only().message()).isEqualTo("the file cannot be read");
    }

    @Test
    void byteOrderMarksAndLineEndsDoNoHarm() throws IOException {
        for (String end : new String[] {"\r\n", "\r", "\n\n"}) {
            depots(("\uFEFF" + tiny().text("depots.csv").replace("\n", end)).getBytes(StandardCharsets.UTF_8));
            assertThat(ScenarioLoader.load(folder).findings()).isEmpty();
        }
        depots(tiny().text("depots.csv").strip().getBytes(StandardCharsets.UTF_8));
        assertThat(ScenarioLoader.load(folder).findings()).isEmpty();
    }

    @Test
    void otherEncodingsAreReported() throws IOException {
        depots(depots("Gärtnerei", StandardCharsets.ISO_8859_1));
        assertThat(only()).extracting(Finding::line, Finding::message).containsExactly(2, "the line is not UTF-8 text");
        depots(depots("Gärtnerei", StandardCharsets.UTF_16));
        assertThat(only().message()).isEqualTo("the file is UTF-16, not UTF-8");
        depots(depots("North", StandardCharsets.UTF_16LE));
        assertThat(only().message()).isEqualTo("the file holds a zero byte");
    }

    @Test
    void zeroBytesAndCutLettersAreReported() throws IOException {
        depots(depots("North\0yard", StandardCharsets.UTF_8));
        assertThat(only()).extracting(Finding::line, Finding::message).containsExactly(2, "the file holds a zero byte");
        byte[] bytes = depots("Nör", StandardCharsets.UTF_8);
        int cut = new String(bytes, StandardCharsets.ISO_8859_1).indexOf('\u00c3') + 1;
        depots(Arrays.copyOf(bytes, cut));
        assertThat(only().message()).isEqualTo("the line is not UTF-8 text");
    }

    @Test
    void truncatedFilesAreReported() throws IOException {
        String text = tiny().text("depots.csv");
        depots(text.substring(0, text.indexOf("400")).getBytes(StandardCharsets.UTF_8));
        assertThat(only())
                .extracting(Finding::line, Finding::message)
                .contains(2, "the row has 4 cells, the header has 7");
    }

    @Test
    void quotesAreTakenAsInRfc4180() {
        ScenarioText quoted = tiny().replace("depots.csv", "North yard", "\"The \"\"north\"\", yard\"");
        assertThat(ScenarioLoader.load(quoted.write(folder))
                        .scenario()
                        .orElseThrow()
                        .depots()
                        .get(0)
                        .name())
                .isEqualTo("The \"north\", yard");
    }

    @Test
    void anOpenQuoteIsReportedWhereItBegins() {
        Breach.in(tiny().rows("tools.csv", "\"saw,blue,900", "drill,blue,500"))
                .hasError("tools.csv:3:", "", "never closed");
        Breach.in(tiny().replace("depots.csv", "North yard", "\"North\" yard"))
                .isOnlyError("depots.csv:2:", "", "cannot be split");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "saw,blue | the row has 2 cells, the header has 3",
                "saw,blue,900, | the row has 4 cells, the header has 3"
            })
    void aRaggedRowIsReported(String row, String message) {
        Breach.in(tiny().rows("tools.csv", row)).isOnlyError("tools.csv:3:", "", message);
    }

    @Test
    void aBadHeaderIsReported() {
        Breach.in(tiny().column("tools.csv", "family", "blue"))
                .isOnlyError("tools.csv:1:family", "family", "there twice");
        Breach.in(tiny().column("tools.csv", "", "blue")).isOnlyError("tools.csv:1:", "", "column 4 has no name");
        Breach.in(tiny().table("tools.csv", "")).isOnlyError("tools.csv:0:", "", "the file is empty");
        Breach.in(tiny().table("tools.csv", "\n\n")).isOnlyError("tools.csv:0:", "", "the file is empty");
        Breach.in(tiny().table("owned.csv", "")).isOnlyError("owned.csv:0:", "", "the file is empty");
    }

    @Test
    void linesAreCountedThroughBlankAndQuotedLines() {
        Breach.in(tiny().table("tools.csv", "tool,family,average_watts\n\ntrimmer,\"blue\",400\n\n\"saw\",blue,0\n"))
                .isOnlyError("tools.csv:5:average_watts", "0", "out of range");
    }

    @Test
    void findingsAreSortedAndComplete() {
        ScenarioText text = tiny().rows("tools.csv", "saw,blue,-1", "drill,green,x")
                .replace("depots.csv", ",63,10", ",0,-1")
                .replace("scenario.json", "EUR", "euro");
        LoadedScenario loaded = ScenarioLoader.load(text.write(folder));
        assertThat(loaded.findings())
                .extracting(finding -> finding.file() + ":" + finding.line() + ":" + finding.column())
                .containsExactly(
                        "depots.csv:2:supply_amps",
                        "depots.csv:2:places",
                        "scenario.json:3:currency",
                        "tools.csv:3:average_watts",
                        "tools.csv:4:average_watts");
    }

    /** SHA-256 of the three letters is the first example of FIPS 180-2, appendix B.1 (from memory). */
    @Test
    void filesAreHashed() throws IOException {
        tiny().write(folder);
        Files.writeString(folder.resolve("owned.csv"), "abc");
        assertThat(ScenarioLoader.load(folder).inputHashes())
                .containsEntry("owned.csv", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
