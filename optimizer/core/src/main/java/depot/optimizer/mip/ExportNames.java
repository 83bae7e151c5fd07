package depot.optimizer.mip;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names of a model's rows and variables in the letters that a format allows. What it forbids becomes an underscore; names that come out alike are
 * told apart by a number, given in the order in which they are asked for.
 */
final class ExportNames {

    /** Several readers stop at 255 characters; the rest is for the number. */
    private static final int LONGEST = 240;

    /** What keeps letters apart from their accents in a decomposed text. */
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

    /** Blanks end a field. */
    private static final Pattern NOT_IN_MPS = Pattern.compile("[^!-~]");

    /** A dollar sign begins a comment in some fields, an asterisk in the first. */
    private static final Pattern NO_MPS_NAME = Pattern.compile("|[$*].*");

    /** Signs of sums and comparisons, and the colon, end a name. */
    private static final Pattern NOT_IN_LP = Pattern.compile("[^A-Za-z0-9_.@~]");

    /** What reads as a number, an exponent or a word of the format. */
    private static final Pattern NO_LP_NAME = Pattern.compile(
            "|[0-9.].*|e|e[0-9e].*|"
                    + "min|minimi[sz]e|minimum|max|maximi[sz]e|maximum|subject|such|to|that|st|s\\.t\\.|st\\.|bounds?|"
                    + "gen|generals?|int|integers?|bin|binary|binaries|semi|semis|sos|sos1|sos2|free|inf|infinity|end",
            Pattern.CASE_INSENSITIVE);

    private final Pattern forbidden;
    private final Pattern noName;
    private final Set<String> taken;

    private ExportNames(Pattern forbidden, Pattern noName, List<String> taken) {
        this.forbidden = forbidden;
        this.noName = noName;
        this.taken = new HashSet<>(taken);
    }

    /** For free MPS. The names that the writer itself uses are not given to anything else. */
    static ExportNames forMps(String... taken) {
        return new ExportNames(NOT_IN_MPS, NO_MPS_NAME, List.of(taken));
    }

    /** For the LP format. The names that the writer itself uses are not given to anything else. */
    static ExportNames forLp(String... taken) {
        return new ExportNames(NOT_IN_LP, NO_LP_NAME, List.of(taken));
    }

    /** The names of all variables, in the model's order. */
    List<String> ofColumns(MipModel model) {
        return model.columns().stream().map(column -> unique(column.name())).toList();
    }

    /** The names of rows, in their order. */
    List<String> ofRows(List<MipModel.Row> rows) {
        return rows.stream().map(row -> unique(row.name())).toList();
    }

    /** A legal name that need not be the only one of its kind. */
    String legal(String name) {
        String plain = ACCENTS.matcher(Normalizer.normalize(name, Normalizer.Form.NFKD))
                .replaceAll("");
        String letters = forbidden.matcher(plain).replaceAll("_");
        String named = noName.matcher(letters).matches() ? "_" + letters : letters;
        return named.length() <= LONGEST ? named : named.substring(0, LONGEST);
    }

    private String unique(String name) {
        String legal = legal(name);
        String one = legal;
        for (int number = 2; !taken.add(one); number++) {
            one = legal + "~" + number;
        }
        return one;
    }
}
