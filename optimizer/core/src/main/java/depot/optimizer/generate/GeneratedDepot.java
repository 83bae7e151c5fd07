package depot.optimizer.generate;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One synthetic depot with its wiring. The circuits that it has may be too weak; the last one is not there yet, and
 * carries all of the depot's chargers if it has to. The supply, after its upgrade if it is small, does too.
 */
record GeneratedDepot(Depot depot, List<Circuit> circuits, List<BaseLoad> baseLoads, List<Owned> owned) {
    /** Twelve packs in three four-bay chargers of 600 W. */
    private static final double PLATE_WATTS_PER_CREW = 1800;

    private static final int OUTLETS_PER_CREW = 4;
    private static final int PLACES_PER_CREW = 7;
    private static final double LINE_VOLTS = 400;
    private static final double PHASE_VOLTS = 230;
    private static final double CONTINUOUS = 0.8;
    private static final double POWER_FACTOR = 0.95;
    private static final double THREE_PHASE = LINE_VOLTS * Math.sqrt(3);
    private static final List<Double> RATINGS = List.of(
            16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0,
            630.0);
    private static final Set<DayOfWeek> WEEK = EnumSet.allOf(DayOfWeek.class);
    private static final int SUPPLY_BASE_AMPS_MOST = 6;
    private static final int CIRCUIT_BASE_AMPS_MOST = 3;

    GeneratedDepot {
        circuits = List.copyOf(circuits);
        baseLoads = List.copyOf(baseLoads);
        owned = List.copyOf(owned);
    }

    /** Id of the depot of a number. */
    static String id(int number) {
        return "d%03d".formatted(number);
    }

    /** Id of the depot whose number is next, below where there is one: it is the same in a bigger fleet. */
    static String neighbour(int number) {
        return id(number == 1 ? 2 : number - 1);
    }

    /** Draws the depot of a number. */
    static GeneratedDepot of(int number, GeneratorSettings settings, Dice dice) {
        String id = id(number);
        Depot depot = depot(id, number, settings, dice);
        List<Circuit> circuits = circuits(id, settings, dice);
        List<BaseLoad> baseLoads = baseLoads(id, circuits, dice);
        List<Owned> owned = dice.percent(25) ? owned(id, circuits.get(0).id()) : List.of();
        return new GeneratedDepot(depot, circuits, baseLoads, owned);
    }

    private static Depot depot(String id, int number, GeneratorSettings settings, Dice dice) {
        double needed = ampsNeeded(settings) + (SUPPLY_BASE_AMPS_MOST + settings.circuitsPerDepot()) / CONTINUOUS;
        int enough = ratingOver(needed);
        boolean small = enough > 0 && dice.percent(25);
        boolean staffed = dice.percent(25);
        int fromMinute = dice.stepped(420, 480, 30);
        return new Depot(
                id,
                "Depot " + number,
                Optional.of("Region " + (number + 3) / 4),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                dice.percent(70) ? GeneratedYear.BY_TIME : GeneratedYear.FLAT,
                LINE_VOLTS,
                3,
                RATINGS.get(small ? enough - 1 : enough),
                PLACES_PER_CREW * settings.crewsPerDepot() + 4,
                staffed ? Optional.of(fromMinute) : Optional.empty(),
                staffed ? Optional.of(fromMinute + 600) : Optional.empty(),
                staffed ? Optional.of(120) : Optional.empty(),
                small ? RATINGS.get(enough) : 0,
                small ? BigDecimal.valueOf(dice.stepped(4000, 9000, 500)) : BigDecimal.ZERO);
    }

    private static List<Circuit> circuits(String id, GeneratorSettings settings, Dice dice) {
        List<Circuit> circuits = new ArrayList<>();
        int last = settings.circuitsPerDepot();
        for (int number = 1; number < last; number++) {
            // The first two are there; the others may be on offer only.
            boolean candidate = number > 2 && dice.percent(50);
            double amps = dice.oneOf(List.of(10.0, 16.0, 16.0, 20.0, 32.0));
            int cost = candidate ? dice.stepped(700, 1600, 100) : 0;
            circuits.add(new Circuit(
                    id + "-c" + number,
                    id,
                    PHASE_VOLTS,
                    1,
                    amps,
                    dice.between(3, 6),
                    OptionalDouble.of(Math.min(amps, 16)),
                    CONTINUOUS,
                    POWER_FACTOR,
                    BigDecimal.valueOf(cost)));
        }
        circuits.add(bigCircuit(id + "-c" + last, id, settings, dice));
        return circuits;
    }

    private static Circuit bigCircuit(String id, String depot, GeneratorSettings settings, Dice dice) {
        return new Circuit(
                id,
                depot,
                LINE_VOLTS,
                3,
                RATINGS.get(ratingOver(ampsNeeded(settings))),
                OUTLETS_PER_CREW * settings.crewsPerDepot() + 2,
                OptionalDouble.of(16),
                CONTINUOUS,
                POWER_FACTOR,
                BigDecimal.valueOf(dice.stepped(1500, 2500, 100)));
    }

    private static List<BaseLoad> baseLoads(String id, List<Circuit> circuits, Dice dice) {
        List<BaseLoad> loads = new ArrayList<>();
        int supplyAmps = dice.between(1, SUPPLY_BASE_AMPS_MOST);
        loads.add(new BaseLoad(id, Optional.empty(), WEEK, 360, 1200, supplyAmps));
        Circuit first = circuits.get(0);
        if (dice.percent(50)) {
            int amps = dice.between(1, CIRCUIT_BASE_AMPS_MOST);
            loads.add(new BaseLoad(id, Optional.of(first.id()), WEEK, 0, 1440, amps));
        }
        return loads;
    }

    private static List<Owned> owned(String id, String circuit) {
        return List.of(
                new Owned(id, Optional.empty(), Optional.empty(), "hand-360", 4),
                new Owned(id, Optional.of(circuit), Optional.empty(), "rail-four", 1));
    }

    /** Three-phase rating that carries every charger of the depot's crews for hours. */
    private static double ampsNeeded(GeneratorSettings settings) {
        return settings.crewsPerDepot() * PLATE_WATTS_PER_CREW / (THREE_PHASE * POWER_FACTOR * CONTINUOUS);
    }

    private static int ratingOver(double amps) {
        for (int index = 0; index < RATINGS.size(); index++) {
            if (RATINGS.get(index) >= amps) {
                return index;
            }
        }
        throw new IllegalArgumentException("No rating carries " + amps + " A. Maybe ask for fewer crews per depot.");
    }
}
