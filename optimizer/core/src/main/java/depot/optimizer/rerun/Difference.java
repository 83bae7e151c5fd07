package depot.optimizer.rerun;

import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.Crew;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/** In what two problems of a depot may differ. */
enum Difference {
    /** Crews come, go, or have another vehicle. */
    CREWS("crews"),
    /** Trips, their times, their needs, or how often they run. */
    WORK("routes and work"),
    /** Circuits, the supply, places, staffed hours. */
    SITE("circuits and site"),
    /** Prices, tariffs, base loads, temperatures. */
    CONDITIONS("prices, base loads and seasons"),
    /** Types of packs, chargers, units and banks. */
    EQUIPMENT("equipment on offer"),
    /** Rows of owned.csv. */
    OWNED("what is owned"),
    /** Who shares packs, who may stay on petrol and at what cost. */
    TERMS("sharing of packs and petrol"),
    /** How finely handovers are rounded, or how hard the solver looks. */
    SETTINGS("settings of the solve");

    private final String words;

    Difference(String words) {
        this.words = words;
    }

    /** In plain words. */
    String words() {
        return words;
    }

    /** Everything in which two problems differ; empty if and only if they are equal. */
    static List<Difference> between(DepotProblem before, DepotProblem after) {
        if (before.equals(after)) {
            return List.of();
        }
        List<Difference> found = Stream.of(values())
                .filter(difference -> !difference.part(before).equals(difference.part(after)))
                .toList();
        return found.isEmpty() ? List.of(WORK) : found;
    }

    private Object part(DepotProblem problem) {
        return switch (this) {
            case CREWS -> problem.crews().stream().map(Difference::vehicle).toList();
            case WORK ->
                problem.days().stream()
                        .map(day -> List.of(day.occurrences(), day.daysPerYear(), day.trips()))
                        .toList();
            case SITE -> List.of(problem.circuits(), problem.depot());
            case CONDITIONS ->
                List.of(
                        problem.seasons(),
                        problem.tariff(),
                        problem.money(),
                        problem.shortagePerKwh(),
                        problem.shortageForbidden(),
                        problem.baseCostPerYear(),
                        problem.days().stream().map(DayKind::slices).toList());
            case EQUIPMENT ->
                List.of(
                        problem.packTypes(),
                        problem.chargers(),
                        problem.portableChargers(),
                        problem.unitTypes(),
                        problem.bankTypes(),
                        problem.packHealth());
            case OWNED -> problem.owned();
            case TERMS ->
                List.of(
                        problem.sharing(),
                        problem.choice(),
                        problem.crews().stream()
                                .filter(crew -> problem.choice().contains(crew.id()))
                                .map(Crew::petrolCostPerYear)
                                .toList());
            case SETTINGS -> problem.settings();
        };
    }

    private static Crew vehicle(Crew crew) {
        return new Crew(
                crew.id(), crew.depot(), crew.packPlaces(), crew.payloadKg(), crew.vehicleWatts(), BigDecimal.ZERO);
    }
}
