package depot.optimizer.model;

import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.model.DayDecision.CarriedDecision;
import depot.optimizer.model.DayDecision.LoadDecision;
import depot.optimizer.model.DayDecision.RoadDecision;
import depot.optimizer.model.DayDecision.SpanDecision;
import depot.optimizer.model.DayDecision.TripDecision;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/** Reads a solver's point into whole numbers. */
public final class DecisionReader {

    /** Steps of one Wh, or of one kW, to which amounts are rounded. */
    private static final double STEPS = 1e7;

    private final DepotProblem problem;
    private final Outcome outcome;

    /** For a point of a model of this problem. */
    public DecisionReader(DepotProblem problem, Outcome outcome) {
        this.problem = problem;
        this.outcome = outcome;
    }

    /** What is bought. */
    public CapacityDecision capacity(CapacityVars vars) {
        List<Integer> unit = new ArrayList<>();
        for (Var[] circuit : vars.unit) {
            int chosen = -1;
            for (int u = 0; u < circuit.length; u++) {
                chosen = outcome.count(circuit[u]) > 0 ? u : chosen;
            }
            unit.add(chosen);
        }
        return new CapacityDecision(
                counts(vars.plain),
                counts(vars.shared),
                counts(vars.priority),
                List.copyOf(unit),
                Arrays.stream(vars.built).map(b -> outcome.count(b) > 0).toList(),
                outcome.count(vars.upgrade) > 0,
                counts(vars.packs),
                counts(vars.kit),
                counts(vars.banks),
                counts(vars.bankPlugs),
                Arrays.stream(vars.electric)
                        .map(e -> e == null || outcome.count(e) > 0)
                        .toList(),
                Arrays.stream(vars.services).map(outcome::count).toList(),
                Arrays.stream(vars.hosted).map(outcome::count).toList(),
                IntStream.range(0, vars.come.length)
                        .mapToObj(m -> outcome.count(vars.come[m]) - outcome.count(vars.go[m]))
                        .toList());
    }

    private List<List<Integer>> counts(Var[][] vars) {
        return Arrays.stream(vars)
                .map(row -> Arrays.stream(row).map(outcome::count).toList())
                .toList();
    }

    /** How a day is run. */
    public DayDecision day(DayVars day) {
        List<List<Double>> unitWh = Arrays.stream(day.energy())
                .map(row ->
                        Arrays.stream(row).map(e -> amount(outcome.value(e))).toList())
                .toList();
        double demandKw = 0;
        for (DayVars.Draw draw : day.draws()) {
            demandKw = Math.max(demandKw, outcome.value(draw.kw()) - draw.room());
        }
        List<Integer> cycles = day.cycles().stream()
                .map(c -> (int) Math.rint(outcome.value(c) / day.kind().daysPerYear()))
                .toList();
        return new DayDecision(
                spans(day), day.trips().stream().map(this::trip).toList(), unitWh, amount(demandKw), cycles);
    }

    /** Without the solver's last digits, which are not the same in every run. */
    private static double amount(double value) {
        return Math.max(0, Math.rint(value * STEPS) / STEPS);
    }

    private List<SpanDecision> spans(DayVars day) {
        List<SpanDecision> spans = new ArrayList<>();
        day.loads().forEach((span, loads) -> {
            List<LoadDecision> used = loads.stream()
                    .map(l -> new LoadDecision(
                            l.kind(),
                            l.pool(),
                            l.slots(),
                            l.rounds().stream().map(outcome::count).toList()))
                    .filter(l -> l.count() > 0)
                    .toList();
            if (!used.isEmpty()) {
                List<Integer> slots = new ArrayList<>();
                for (Batch batch : day.batches()) {
                    if (batch.span().equals(span)) {
                        slots.addAll(Collections.nCopies(outcome.count(batch.chargers()), batch.slots()));
                    }
                }
                spans.add(new SpanDecision(
                        span.feed(),
                        span.charger(),
                        span.from(),
                        span.to(),
                        List.copyOf(slots),
                        used,
                        fillings(day, span)));
            }
        });
        return List.copyOf(spans);
    }

    private List<List<PackKind>> fillings(DayVars day, BatchSpan span) {
        List<List<PackKind>> fillings = new ArrayList<>();
        for (Filling filling : day.fillings().getOrDefault(span, List.of())) {
            fillings.addAll(Collections.nCopies(outcome.count(filling.chargers()), filling.order()));
        }
        return List.copyOf(fillings);
    }

    private TripDecision trip(TripVars trip) {
        return new TripDecision(
                trip.trip(),
                trip.carried().stream()
                        .map(c -> new CarriedDecision(c.type(), outcome.count(c.full()), outcome.count(c.eighty())))
                        .filter(c -> c.full() + c.eighty() > 0)
                        .toList(),
                trip.roads().stream()
                        .filter(r -> outcome.count(r.packs()) > 0)
                        .map(this::road)
                        .toList(),
                trip.shortWh().stream().map(v -> amount(outcome.value(v))).toList());
    }

    private RoadDecision road(RoadLoad r) {
        int packs = outcome.count(r.packs());
        double taken = r.bank() < 0 ? 0 : packs * BankEnergy.takenWh(problem, r);
        return new RoadDecision(
                r.source(),
                r.emptiedBy(),
                r.servesFrom(),
                r.from(),
                r.to(),
                r.bank(),
                r.visit() ? "" : r.option().type().id(),
                r.fit(),
                packs,
                taken);
    }
}
