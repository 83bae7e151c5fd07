package depot.optimizer.check;

import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.RolloutTables.CrewPhases;
import depot.optimizer.dictionary.RolloutTables.Phases;
import depot.optimizer.dictionary.RolloutTables.RegionBudgets;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RegionBudget;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Rules of phases, of regional budgets and of crews that change in later phases. */
final class RolloutRules {
    private RolloutRules() {}

    /** Phases are in order of time and begin at different times. */
    static void yearsRise(Drafts drafts, Findings findings) {
        Located<Phase> before = null;
        for (Located<Phase> phase : drafts.phases) {
            if (before != null && phase.value().year() <= before.value().year()) {
                findings.error(
                        phase,
                        Phases.YEAR,
                        "not later than phase " + before.value().id() + " (line "
                                + before.row().line() + ") in year "
                                + before.value().year(),
                        "list the phases in order of time, each in a year of its own");
            }
            before = phase;
        }
    }

    /** The first phase begins now: what is not planned for has no cost. */
    static void firstBeginsNow(Drafts drafts, Findings findings) {
        if (!drafts.whole(Phases.TABLE)) {
            return;
        }
        drafts.phases.stream()
                .findFirst()
                .filter(phase -> phase.value().year() > 0)
                .ifPresent(phase -> findings.error(
                        phase,
                        Phases.YEAR,
                        "the first phase does not begin now",
                        "give it year 0; years count from now"));
    }

    /** A phase begins before the horizon ends. */
    static void withinHorizon(Drafts drafts, Findings findings) {
        Optional<Integer> horizon = drafts.settings.flatMap(row -> row.find(Settings.HORIZON_YEARS));
        for (Located<Phase> phase : drafts.phases) {
            horizon.filter(years -> phase.value().year() >= years)
                    .ifPresent(years -> findings.error(
                            phase,
                            Phases.YEAR,
                            "not within the horizon of " + years + " years (horizon_years in scenario.json)",
                            "at most " + (years - 1) + "; years count from now, they are not dates"));
        }
    }

    /** A budget's region is one that a depot is in. */
    static void knownRegions(Drafts drafts, Findings findings) {
        if (!drafts.table(Depots.TABLE).complete()) {
            return;
        }
        Set<String> regions = new HashSet<>();
        drafts.table(Depots.TABLE).rows().forEach(row -> row.find(Depots.REGION).ifPresent(regions::add));
        for (Located<RegionBudget> budget : drafts.regionBudgets) {
            if (!regions.contains(budget.value().region())) {
                findings.error(
                        budget,
                        RegionBudgets.REGION,
                        "no depot in depots.csv is in this region",
                        NearestKey.hint(budget.value().region(), regions));
            }
        }
    }

    /** The earliest phase of a crew is not after its latest. */
    static void earliestBeforeLatest(Drafts drafts, Findings findings) {
        List<String> order =
                drafts.phases.stream().map(phase -> phase.value().id()).toList();
        for (Located<CrewConversion> conversion : drafts.conversions) {
            int earliest = order.indexOf(conversion.value().earliestPhase());
            // A phase that is not there is told by the rule of references.
            int latest = conversion.value().latestPhase().map(order::indexOf).orElse(-1);
            if (earliest >= 0 && latest >= 0 && earliest > latest) {
                findings.error(
                        conversion,
                        CrewPhases.EARLIEST_PHASE,
                        "later than the latest phase, " + order.get(latest),
                        "give a phase that is not after it, or leave latest_phase blank");
            }
        }
    }

    /** A crew that may be on petrol after the first phase began has a cost of petrol, or staying would be free. */
    static void petrolCosts(Drafts drafts, Findings findings) {
        if (!drafts.whole(Phases.TABLE)) {
            return;
        }
        String first = drafts.phases.isEmpty()
                ? Phase.NOW.id()
                : drafts.phases.get(0).value().id();
        for (Located<CrewConversion> conversion : drafts.conversions) {
            Located<Crew> crew = drafts.crewsById.get(conversion.value().crew());
            boolean mayStay =
                    conversion.value().latestPhase().filter(first::equals).isEmpty();
            if (mayStay && crew != null && crew.value().petrolCostPerYear().signum() == 0) {
                findings.error(
                        conversion,
                        CrewPhases.CREW,
                        "the crew may stay on petrol, which costs nothing in crews.csv (line "
                                + crew.row().line() + ")",
                        "give it a petrol_cost_per_year there, or let it change in phase " + first);
            }
        }
    }
}
