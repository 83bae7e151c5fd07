package depot.optimizer.report.text;

import java.util.regex.Pattern;

/** Texts that spreadsheets show and do not run. */
public final class SafeText {

    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");

    /** The last four are the wide forms of the first, which some spreadsheets read alike. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private SafeText() {}

    /** The text, with an apostrophe in front where a spreadsheet would take it for a formula. */
    public static String neutral(String text) {
        boolean formula = !text.isEmpty()
                && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0
                && !PLAIN_NUMBER.matcher(text).matches();
        return formula ? "'" + text : text;
    }
}
