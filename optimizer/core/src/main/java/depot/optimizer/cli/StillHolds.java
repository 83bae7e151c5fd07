package depot.optimizer.cli;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.Violation;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a plan still holds on tables that are not those it was made from, and where it does not. */
final class StillHolds {

    /** Depots that are named one by one. */
    private static final int NAMED = 20;

    private final Scenario scenario;
    private final Plan plan;
    private final List<DepotReplay> broken;
    private final List<DepotReplay> dearer;
    private final List<String> unplanned;
    private final List<Violation> together;
    private final List<Violation> otherwise;

    StillHolds(Scenario scenario, Plan plan, ReplayReport report) {
        this.scenario = scenario;
        this.plan = plan;
        broken = report.depots().stream().filter(StillHolds::breaks).toList();
        dearer = report.depots().stream()
                .filter(depot -> !breaks(depot) && !depot.costs().agrees())
                .toList();
        unplanned = unplanned();
        together = fleet(report, kind -> kind != Violation.Kind.COST);
        otherwise = fleet(report, kind -> kind == Violation.Kind.COST);
    }

    private static List<Violation> fleet(ReplayReport report, Predicate<Violation.Kind> which) {
        return report.fleet().stream()
                .filter(violation -> which.test(violation.kind()))
                .toList();
    }

    private static boolean breaks(DepotReplay depot) {
        return !depot.allViolations().isEmpty() || !depot.failedDays().isEmpty();
    }

    private List<String> unplanned() {
        Set<String> planned = plan.depots().stream().map(DepotPlan::depot).collect(Collectors.toSet());
        Set<String> working = scenario.work().stream().map(Work::crew).collect(Collectors.toSet());
        Set<String> bases = scenario.crews().stream()
                .filter(crew -> working.contains(crew.id()))
                .map(Crew::depot)
                .collect(Collectors.toSet());
        return scenario.depots().stream()
                .map(Depot::id)
                .filter(depot -> bases.contains(depot) && !planned.contains(depot))
                .toList();
    }

    /** What the replay of the plan's own depots leaves out: depots with work that the plan knows nothing of. */
    ExitStatus status(ExitStatus ofReplay) {
        return unplanned.isEmpty() ? ofReplay : ExitStatus.REPLAY_FAILED;
    }

    /** The answer first, then the depots where the plan does not hold, then those where only the cost is another. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        long all = depots(plan.depots().stream().map(DepotPlan::depot)) + unplanned.size();
        long fail = depots(broken.stream().map(DepotReplay::depot)) + unplanned.size();
        lines.add(PlanSummary.line("Holds", answer(fail, all)));
        List<String> where = new ArrayList<>();
        together.forEach(violation -> where.add("all depots together: " + violation.message()));
        broken.forEach(depot -> where.add(name(depot) + ": " + words(depot)));
        unplanned.forEach(depot -> where.add(depot + ": has work, and the plan does not know it"));
        where.stream().limit(NAMED).forEach(line -> lines.add(PlanSummary.line("", line)));
        if (where.size() > NAMED) {
            lines.add(PlanSummary.line("", "and %d more".formatted(where.size() - NAMED)));
        }
        if (!dearer.isEmpty()) {
            lines.add(PlanSummary.line("Cost", cost()));
        }
        otherwise.forEach(violation -> lines.add(PlanSummary.line("Cost", violation.message())));
        return lines;
    }

    private String answer(long fail, long all) {
        if (fail > 0) {
            return "no: on these tables %d of %s cannot run as planned".formatted(fail, Figures.count(all, "depot"));
        }
        return together.isEmpty()
                ? "yes: on these tables every day still runs as planned"
                : "no: on these tables every day still runs as planned, but together the depots break what they share";
    }

    private static long depots(Stream<String> names) {
        return names.distinct().count();
    }

    private String name(DepotReplay depot) {
        return plan.phases().size() == 1 ? depot.depot() : "%s in %s".formatted(depot.depot(), depot.phase());
    }

    private String words(DepotReplay depot) {
        if (scenario.depots().stream().noneMatch(each -> each.id().equals(depot.depot()))) {
            return "is no longer in the tables";
        }
        double days = depot.days().stream().mapToDouble(DayReplay::daysPerYear).sum();
        double failed =
                depot.failedDays().stream().mapToDouble(DayReplay::daysPerYear).sum();
        TreeMap<Violation.Kind, Integer> kinds = new TreeMap<>();
        depot.allViolations().forEach(violation -> kinds.merge(violation.kind(), 1, Integer::sum));
        String rules = kinds.entrySet().stream()
                .map(kind -> "%s (%d)".formatted(Words.of(kind.getKey()), kind.getValue()))
                .collect(Collectors.joining(", "));
        String first = depot.allViolations().stream()
                .findFirst()
                .map(violation -> "; first: " + violation.message())
                .orElse("");
        return "%s of %s a year fail; rules broken: %s%s"
                .formatted(Figures.read(failed, 0), Figures.count(Figures.read(days, 0), "day"), rules, first);
    }

    private String cost() {
        BigDecimal now =
                total(dearer.stream().map(depot -> depot.costs().total()).toList());
        BigDecimal planned =
                total(dearer.stream().map(depot -> depot.costs().planned()).toList());
        int decimals = Figures.decimals(scenario.currency());
        return "in %s the days run as planned at another cost: %s %s, planned %s"
                .formatted(
                        Figures.count(depots(dearer.stream().map(DepotReplay::depot)), "depot"),
                        Figures.read(now, decimals),
                        plan.currency(),
                        Figures.read(planned, decimals));
    }

    private static BigDecimal total(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
