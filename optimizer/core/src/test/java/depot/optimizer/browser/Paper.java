package depot.optimizer.browser;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Pages on paper. */
public final class Paper {

    /** One of these stands in a PDF file for each of its pages (ISO 32000-1, 7.7.3.3; from memory). */
    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page(?![A-Za-z])");

    private Paper() {}

    /** How many sides of A4 a page takes. */
    public static int pages(Chromium chromium, Path page) {
        Tab tab = chromium.open();
        tab.visit(Tab.address(page));
        return (int) PAGE.matcher(new String(tab.pdf(), StandardCharsets.ISO_8859_1))
                .results()
                .count();
    }
}
