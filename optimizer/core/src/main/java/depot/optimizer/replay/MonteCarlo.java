package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.TrialReport.DepotTrials;
import depot.optimizer.replay.TrialReport.Share;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Tries a plan on days drawn at random: which season day it is, by how often it comes; the energy that each stop takes; who comes back late.
 * Each depot draws its days from a generator of its own, so that a report does not depend on the order in which depots are run.
 */
public final class MonteCarlo {
    private MonteCarlo() {}

    /** Runs so many days of each depot with the default lateness. */
    public static TrialReport run(Scenario scenario, Plan plan, int trials, long seed) {
        return run(scenario, plan, new TrialSettings(trials, seed, LateReturns.DEFAULT));
    }

    /** Runs days as the settings ask for. Depots that the scenario does not have count no days. */
    public static TrialReport run(Scenario scenario, Plan plan, TrialSettings settings) {
        List<DepotTrials> depots = IntStream.range(0, plan.depots().size())
                .parallel()
                .mapToObj(i -> depot(scenario, plan.depots().get(i), settings, i))
                .toList();
        Share fleet = new Share(0, 0);
        SortedMap<String, Share> seasons = new TreeMap<>();
        for (DepotTrials depot : depots) {
            fleet = fleet.plus(depot.all());
            depot.seasons().forEach((season, share) -> seasons.merge(season, share, Share::plus));
        }
        return new TrialReport(settings, fleet, Collections.unmodifiableSortedMap(seasons), depots);
    }

    private static DepotTrials depot(Scenario scenario, DepotPlan plan, TrialSettings settings, int number) {
        Share all = new Share(0, 0);
        SortedMap<String, Share> seasons = new TreeMap<>();
        Optional<DepotTables> tables = DepotTables.of(scenario, plan);
        if (tables.isPresent()) {
            Yard yard = new Yard(tables.get(), plan);
            RandomGenerator random =
                    new Well19937c(new int[] {(int) settings.seed(), (int) (settings.seed() >>> 32), number});
            Draw draw = new RandomDraw(random, scenario.demandSpread(), settings.late());
            Choice choice = Choice.of(yard);
            for (int trial = 0; trial < settings.trials() && choice.any(); trial++) {
                Choice.Day day = choice.draw(random);
                TrialDay run = new TrialDay();
                new DaySimulation(yard, day.setup(), draw, run).run();
                Share one = new Share(run.met() ? 1 : 0, 1);
                all = all.plus(one);
                seasons.merge(day.season(), one, Share::plus);
            }
        }
        return new DepotTrials(plan.depot(), all, Collections.unmodifiableSortedMap(seasons));
    }

    /** The days of a plan, each as likely as it is frequent. */
    private record Choice(List<Day> days, double daysPerYear) {

        private record Day(String season, DaySetup setup, double untilDay) {}

        static Choice of(Yard yard) {
            List<Day> days = new ArrayList<>();
            double until = 0;
            DayCases cases = new DayCases(yard.tables());
            DemandCeiling ceiling = new DemandCeiling(yard);
            for (int index = 0; index < yard.plan().days().size(); index++) {
                for (DayCase day : cases.of(index, yard.plan().days().get(index))) {
                    DaySetup setup = DaySetup.of(yard, ceiling, day);
                    for (SeasonDay occurrence : day.occurrences()) {
                        until +=
                                yard.tables().seasons().get(occurrence.season()).weeksPerYear();
                        days.add(new Day(occurrence.season(), setup, until));
                    }
                }
            }
            return new Choice(days, until);
        }

        boolean any() {
            return !days.isEmpty();
        }

        Day draw(RandomGenerator random) {
            double at = random.nextDouble() * daysPerYear;
            for (Day day : days) {
                if (at < day.untilDay()) {
                    return day;
                }
            }
            return days.get(days.size() - 1);
        }
    }
}
