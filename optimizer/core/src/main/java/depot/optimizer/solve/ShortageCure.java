package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.LimitKind;
import depot.optimizer.model.Relief;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Explains a depot's shortages. One kind of limit after the other is opened, every day must be met, and as little as possible is added to it; the
 * kind whose plan costs least is the cure. When no single kind helps, all are opened together.
 */
public final class ShortageCure {

    /** Makes any unit of relief dearer than what it could save, so that as little as possible is added. */
    private static final double RELIEF_COST = 1e5;

    private record Cure(Set<LimitKind> kinds, String words, double presentCost) {}

    private ShortageCure() {}

    /** A row for each season day, trip and family that falls short; empty for a plan without shortages. */
    public static List<ExplainedShortage> explain(DepotProblem problem, DepotPlan plan) {
        TreeSet<Integer> shortDays = new TreeSet<>();
        for (int d = 0; d < plan.days().size(); d++) {
            if (plan.days().get(d).trips().stream().anyMatch(t -> !t.shortages().isEmpty())) {
                shortDays.add(d);
            }
        }
        if (shortDays.isEmpty()) {
            return List.of();
        }
        Cure cure = cheapest(problem, shortDays);
        double withoutShortage = plan.costs().stream()
                .filter(line -> line.category() != CostLine.Category.SHORTAGE)
                .mapToDouble(CostLine::presentCost)
                .sum();
        List<ExplainedShortage> rows = new ArrayList<>();
        for (int d : shortDays) {
            addRows(rows, problem, plan.days().get(d), cure, withoutShortage);
        }
        return List.copyOf(rows);
    }

    private static Cure cheapest(DepotProblem problem, SortedSet<Integer> days) {
        Cure best = null;
        for (LimitKind kind : LimitKind.values()) {
            Cure cure = tryOpening(problem, days, Set.of(kind));
            if (cure != null && (best == null || cure.presentCost() < best.presentCost())) {
                best = cure;
            }
        }
        return best != null ? best : tryOpening(problem, days, Set.of(LimitKind.values()));
    }

    /** The plan with some limits open; null when it is still impossible. */
    private static Cure tryOpening(DepotProblem problem, SortedSet<Integer> days, Set<LimitKind> kinds) {
        List<DayTerms> terms =
                Collections.nCopies(problem.days().size(), new DayTerms(Tightening.NONE, ShortagePolicy.REFUSE));
        MasterProblem master = new MasterProblem(
                new MipModel(problem.depot().id()), DepotRollout.of(problem), days, List.of(), terms, kinds);
        Relief relief = master.capacity().relief();
        for (LimitKind kind : LimitKind.values()) {
            relief.of(kind).forEach(amount -> master.model().cost(RELIEF_COST, amount));
        }
        Outcome outcome = master.solve(
                Stage.EXACT,
                new Limits(
                        0.01,
                        problem.settings().nodeLimit(),
                        problem.settings().timeLimitSeconds(),
                        problem.settings().seed()));
        if (!outcome.hasPoint()) {
            return null;
        }
        double added = 0;
        List<String> words = new ArrayList<>();
        for (LimitKind kind : LimitKind.values()) {
            List<String> subjects = Relief.subjects(problem, kind);
            for (int i = 0; i < subjects.size(); i++) {
                Var amount = relief.of(kind).get(i);
                double size = outcome.value(amount);
                if (size > 1e-4) {
                    added += size;
                    words.add("%s of %s: %s %s more"
                            .formatted(kind.words(), subjects.get(i), roundedUp(size), kind.unit()));
                }
            }
        }
        return new Cure(kinds, String.join("; ", words), outcome.objective() - RELIEF_COST * added);
    }

    private static String roundedUp(double size) {
        double up = Math.ceil(size * 10 - 1e-3) / 10;
        return up == Math.rint(up) ? Long.toString(Math.round(up)) : Double.toString(up);
    }

    private static void addRows(
            List<ExplainedShortage> rows, DepotProblem problem, DayPlan day, Cure cure, double planCost) {
        double weeks = day.daysPerYear() / day.occurrences().size();
        for (SeasonDay occurrence : day.occurrences()) {
            for (TripPlan trip : day.trips()) {
                for (TripPlan.Shortage shortage : trip.shortages()) {
                    double kwh = shortage.wattHours() * weeks / 1000;
                    rows.add(new ExplainedShortage(
                            problem.depot().id(),
                            problem.phase(),
                            occurrence,
                            trip.crew(),
                            trip.trip(),
                            shortage.family(),
                            shortage.wattHours(),
                            weeks,
                            problem.shortageForbidden()
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(kwh
                                            * problem.shortagePerKwh()
                                            * problem.money().annuity()),
                            limit(cure),
                            cure == null
                                    ? "no change of these limits cures it: see pack types and charge times"
                                    : cure.words(),
                            cure == null ? OptionalDouble.empty() : OptionalDouble.of(cure.presentCost() - planCost)));
                }
            }
        }
    }

    private static String limit(Cure cure) {
        if (cure == null) {
            return "energy, tools at once or charge times";
        }
        return cure.words().isEmpty()
                ? "the price of shortage: covering it costs more"
                : String.join(
                        " and ",
                        cure.kinds().stream().map(LimitKind::words).sorted().toList());
    }
}
