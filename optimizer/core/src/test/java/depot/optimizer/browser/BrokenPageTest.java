package depot.optimizer.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A page with every kind of fault: the checks find them, or they would say nothing about other pages. */
@NeedsChromium
class BrokenPageTest {

    @TempDir
    private static Path folder;

    private static Chromium chromium;
    private static Findings findings;

    @BeforeAll
    static void look() throws IOException {
        Path page = folder.resolve("broken.html");
        try (var in = BrokenPageTest.class.getResourceAsStream("broken.html")) {
            Files.copy(in, page);
        }
        chromium = Chromium.start();
        findings = PageAudit.of(chromium, List.of(page));
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "CONSOLE | something is wrong",
                "REQUESTS | asks for http://elsewhere.invalid/picture.png",
                "STANDALONE | leads elsewhere: <img",
                "STANDALONE | script: <script>",
                "SCRIPTS_OFF | other words without scripts",
                "LINKS | #nowhere: no such place",
                "LINKS | missing.html: net::ERR_FILE_NOT_FOUND",
                "LINKS | two places have the name twice",
                "PHONE_WIDTH | 900 px wide in a window of 360: <p class=\"wide\">",
                "PHONE_WIDTH | 900 px wide in a window of 320",
                "PAPER_WIDTH | 900 px wide in a window of 687: <p class=\"wide\">",
                "KEYBOARD | Tab leads to number 3 of 4, not to number 0",
                "LANDMARKS | 0 parts are its main",
                "LANDMARKS | a part without a name: navigation",
                "LANDMARKS | navigations with one name",
                "LANDMARKS | no language",
                "LANDMARKS | no title",
                "LANDMARKS | not in standards mode",
                "HEADINGS | a level is left out before <h3",
                "HEADINGS | 0 first headings",
                "TABLES | no caption",
                "TABLES | no headings of columns",
                "TABLES | no scope",
                "TABLES | nothing names the row",
                "CHARTS | no title",
                "CHARTS | no description",
                "CHARTS | no table with its numbers",
                "CONTRAST | 2.85 to 1, asked for 4.5",
                "CONTRAST | 1.16 to 1, asked for 3.0",
                "COLOURS | \"one\" and \"two\" are only",
            })
    void everyCheckFindsItsFault(Check check, String fault) {
        assertThat(findings.faults(check)).anySatisfy(found -> assertThat(found).contains(fault));
    }

    @ParameterizedTest
    @CsvSource({
        "<a href='#b'>one</a><a id='b' style='outline: none' href='#b'>two</a>, nothing shows where the focus is",
        "<a href='#b'>one</a><a id='b' style='position: absolute; left: -999px' href='#b'>two</a>, the focus is out of view",
        "<a href='#m'>one</a><main id='m' tabindex='-1'><a href='#m'>two</a></main><a href='#m'>three</a>,",
        "<a href='#m'>one</a><main id='m' tabindex='-1'>two</main>,",
        "<a href='#m'>one</a><main id='m'>two</main>, the first link does not lead",
        "<a href='#c'>one</a><main><a id='b' href='#b'>two</a></main><a id='c' href='#c'>three</a>, the first link does not lead",
    })
    void theWalkByKeyboardFindsEachFault(String body, String fault) throws IOException {
        Path page = folder.resolve("keyboard.html");
        Files.writeString(
                page,
                "<!DOCTYPE html><html lang='en'><title>t</title>"
                        + "<style>:focus { outline: 3px solid #b34700 }</style><body>" + body + "</body></html>");
        List<String> found = PageAudit.of(chromium, List.of(page)).faults(Check.KEYBOARD);
        if (fault == null) {
            assertThat(found).isEmpty();
        } else {
            assertThat(found).anySatisfy(one -> assertThat(one).contains(fault));
        }
    }

    @Test
    void longPagesTakeMorePaper() throws IOException {
        Path page = folder.resolve("long.html");
        Files.writeString(
                page, "<!DOCTYPE html><p style='break-after: page'>one<p style='break-after: page'>two<p>three");
        assertThat(Paper.pages(chromium, page)).isEqualTo(3);
    }
}
