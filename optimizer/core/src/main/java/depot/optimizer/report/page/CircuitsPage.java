package depot.optimizer.report.page;

import java.util.List;

/**
 * What the circuit schedule of a depot shows.
 *
 * @param work what is wanted of an electrician, empty: nothing is to be built
 * @param rating wiring, rating and what may be drawn for hours
 * @param load what is plugged in, and what of it counts
 * @param units load-sharing units and their settings, may be without rows
 * @param pressed whether the load-sharing units together could draw more than the supply has left, in words; empty: they cannot
 * @param equipment everything that is plugged in
 */
public record CircuitsPage(
        String title,
        String subtitle,
        List<Cell> neighbours,
        List<String> work,
        TableView rating,
        TableView load,
        TableView units,
        String pressed,
        TableView equipment) {}
