package depot.optimizer.report.page;

/**
 * A cell of a table.
 *
 * @param text shown
 * @param link address to go to, empty: none
 * @param bar width of a bar in front of the text in hundredths of the widest, below 0: none
 */
public record Cell(String text, String link, double bar) {

    /** Words or a formatted number. */
    public static Cell text(String text) {
        return new Cell(text, "", -1);
    }

    /** Words that lead to another page or place. */
    public static Cell link(String text, String link) {
        return new Cell(text, link, -1);
    }

    /** A bar as wide as its share of the widest, 0 to 1. */
    public static Cell bar(double share) {
        return new Cell("", "", Math.round(1000 * Math.max(0, Math.min(1, share))) / 10.0);
    }
}
