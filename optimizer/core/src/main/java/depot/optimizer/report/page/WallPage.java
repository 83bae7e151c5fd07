package depot.optimizer.report.page;

import java.util.List;

/**
 * What the sheet for a depot's wall shows.
 *
 * @param css how big its type is, so that it fits on two sheets of A4
 * @param outlets what is plugged in where
 * @param days what is loaded when, days alike together
 */
public record WallPage(
        String title,
        String subtitle,
        List<Cell> neighbours,
        String css,
        List<Outlets> outlets,
        List<Day> days,
        List<String> cautions) {

    /** What is plugged into a circuit or the load-sharing unit on it. */
    public record Outlets(String circuit, String unit, List<Plug> plugs) {}

    /**
     * Something in an outlet.
     *
     * @param priority whether the outlet is one that a load-sharing unit feeds first
     */
    public record Plug(String outlet, String what, String type, boolean priority) {}

    /** What is loaded on days that are alike. */
    public record Day(String id, String title, List<Round> rounds) {}

    /** What is loaded at one handover and stays until another. */
    public record Round(String load, String collect, List<Bench> benches) {}

    /**
     * Chargers that get the same.
     *
     * @param chargers their names, each part in one piece
     * @param packs in the order in which they charge, each part in one piece
     */
    public record Bench(List<String> chargers, List<String> packs) {}
}
