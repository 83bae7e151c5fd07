package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Answers of the depots to prices of shared limits, several depots at a time. An answer depends on nothing but the depot, the prices and those that the
 * depot was asked first, so that a run that is taken up again finds the same ones.
 */
final class DepotPricing implements AutoCloseable {

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final RunControl control;
    private final DepotSolver[] solvers;
    private final DepotThreads threads;

    /**
     * What a depot is asked for.
     *
     * @param depot its place
     * @param allowed how far cost and bound may be apart
     * @param ranges how much of some limits its plans may use
     */
    record Question(int depot, SharedPrices prices, double allowed, Map<SharedLimit, UseRange> ranges) {}

    DepotPricing(Scenario scenario, List<DepotRollout> rollouts, RunControl control) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.control = control;
        solvers = new DepotSolver[rollouts.size()];
        threads = new DepotThreads(scenario.solve().threads(), control);
    }

    /** Linear relaxations of some depots. What a depot's first one learns of the days serves all of its later answers. */
    List<LinearPoint> linear(List<Integer> depots, SharedPrices prices) {
        return threads.all(depots, d -> {
            SharedPrices own = concerning(d, prices);
            if (solvers[d] == null) {
                solvers[d] = new DepotSolver(rollouts.get(d), own, 0);
                return solvers[d].linear();
            }
            return solvers[d].repriced(own, 0).linear();
        });
    }

    /** Plans, replayed, with their bounds, in the order of the questions. Depots were asked for a linear relaxation before. */
    List<ProvenDepot> plans(List<Question> questions) {
        return threads.all(questions, this::plan);
    }

    /** The same, with nothing for questions that have no plan within their ranges. */
    List<Optional<ProvenDepot>> possible(List<Question> questions) {
        return threads.all(questions, question -> {
            try {
                return Optional.of(plan(question));
            } catch (NoPlanException e) {
                return Optional.empty();
            }
        });
    }

    /** Other work, some of it at a time, until the run is to be ended. */
    <T> List<T> others(List<Supplier<T>> work) {
        return threads.all(work, Supplier::get);
    }

    /** Plans, replayed, with their bounds: what all of these are apart is no more than what the questions allow together, where that can be had. */
    List<ProvenDepot> together(List<Question> questions) {
        List<OpenDepot> depots = questions.stream().map(this::open).toList();
        OpenDepots open = new OpenDepots(depots, threads);
        open.first(depot -> {});
        double most = questions.stream().mapToDouble(Question::allowed).sum();
        while (open.further(most)) {
            // As long as there is anything to be done.
        }
        return depots.stream().map(OpenDepot::best).toList();
    }

    private ProvenDepot plan(Question question) {
        return open(question).closed();
    }

    private OpenDepot open(Question question) {
        int depot = question.depot();
        SharedPrices own = concerning(depot, question.prices());
        return new OpenDepot(
                scenario,
                rollouts.get(depot),
                control.answers(),
                words(question, own),
                own,
                question.allowed(),
                () -> solvers[depot].within(own, question.allowed(), question.ranges()));
    }

    /** The question to the last digit. */
    private String words(Question question, SharedPrices own) {
        StringBuilder words = new StringBuilder(
                rollouts.get(question.depot()).depot().id() + " " + Double.toHexString(question.allowed()));
        own.byLimit()
                .forEach((limit, price) ->
                        words.append("; ").append(limit.name()).append(' ').append(Double.toHexString(price)));
        question.ranges().forEach((limit, range) -> words.append("; ")
                .append(limit.name())
                .append(" within ")
                .append(range));
        return words.toString();
    }

    /** The prices that concern a depot. */
    private SharedPrices concerning(int depot, SharedPrices prices) {
        Map<SharedLimit, Double> own = new LinkedHashMap<>();
        rollouts.get(depot).limits().forEach(limit -> own.put(limit, prices.of(limit)));
        return new SharedPrices(own);
    }

    @Override
    public void close() {
        threads.close();
    }
}
