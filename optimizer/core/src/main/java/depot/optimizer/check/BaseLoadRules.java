package depot.optimizer.check;

import depot.optimizer.check.SpanSweep.Span;
import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.DepotTables.BaseLoads;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rules of what circuits and supplies already feed. */
final class BaseLoadRules {
    private BaseLoadRules() {}

    private record Line(String depot, Optional<String> circuit) {}

    private record Pair(TypedRow earlier, TypedRow later) {}

    /** A base load ends after it begins. */
    static void spans(Drafts drafts, Findings findings) {
        drafts.baseLoads.forEach(load -> SpanSweep.checkOrder(load.row(), BaseLoads.FROM, BaseLoads.TO, findings));
    }

    /** A base load's circuit is in its depot. */
    static void circuitOfDepot(Drafts drafts, Findings findings) {
        for (Located<BaseLoad> load : drafts.baseLoads) {
            load.value()
                    .circuit()
                    .map(drafts.circuitsById::get)
                    .map(circuit -> circuit.value().depot())
                    .filter(depot -> !depot.equals(load.value().depot()))
                    .ifPresent(depot -> findings.error(
                            load,
                            BaseLoads.CIRCUIT,
                            "the circuit is in depot " + depot + ", not in "
                                    + load.value().depot(),
                            "name a circuit of the depot"));
        }
    }

    /** A base load is at most what its breaker or supply carries; one that leaves nothing to charge with is noticed. */
    static void withinRating(Drafts drafts, Findings findings) {
        for (Located<BaseLoad> load : drafts.baseLoads) {
            Optional<Circuit> circuit =
                    load.value().circuit().map(drafts.circuitsById::get).map(Located::value);
            Optional<Double> rating = load.value().circuit().isPresent()
                    ? circuit.map(Circuit::breakerAmps)
                    : Optional.ofNullable(drafts.depotsById.get(load.value().depot()))
                            .map(depot -> depot.value().supplyAmps());
            double usable = rating.orElse(Double.MAX_VALUE)
                    * circuit.map(Circuit::continuousFactor).orElse(1.0);
            if (rating.isPresent() && load.value().amps() > rating.get()) {
                findings.error(
                        load, BaseLoads.AMPS, "more than the rating of " + rating.get() + " A", "is the unit amperes?");
            } else if (circuit.isPresent() && load.value().amps() >= usable) {
                findings.notice(
                        load,
                        BaseLoads.AMPS,
                        "the load leaves nothing of the circuit's usable " + usable + " A to charge with",
                        "a plain charger cannot go on this circuit");
            }
        }
    }

    /** Base loads of one circuit or supply do not overlap: it would be unclear whether they add up. */
    static void overlaps(Drafts drafts, Findings findings) {
        Map<Line, List<Located<BaseLoad>>> byLine = new LinkedHashMap<>();
        drafts.baseLoads.stream()
                .filter(load -> load.value().fromMinute() < load.value().toMinute())
                .forEach(load -> byLine.computeIfAbsent(
                                new Line(load.value().depot(), load.value().circuit()), none -> new ArrayList<>())
                        .add(load));
        byLine.values().forEach(loads -> overlaps(loads, findings));
    }

    private static void overlaps(List<Located<BaseLoad>> loads, Findings findings) {
        Map<Pair, Set<DayOfWeek>> pairs = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            List<Span> spans = loads.stream()
                    .filter(load -> load.value().days().contains(day))
                    .map(load -> new Span(
                            load.row(), load.value().fromMinute(), load.value().toMinute()))
                    .toList();
            SpanSweep.sweep(spans, new SpanSweep.Faults() {
                @Override
                public void overlap(Span earlier, Span later) {
                    pairs.computeIfAbsent(new Pair(earlier.row(), later.row()), none -> EnumSet.noneOf(DayOfWeek.class))
                            .add(day);
                }

                @Override
                public void gap(int from, int to, Span besides) {
                    // Times without a base load are the usual case.
                }
            });
        }
        pairs.forEach((pair, days) -> findings.error(
                pair.later,
                BaseLoads.FROM,
                "the span overlaps that of line " + pair.earlier.line() + " on " + DaysSyntax.text(days),
                "give each time one row with the whole load"));
    }
}
