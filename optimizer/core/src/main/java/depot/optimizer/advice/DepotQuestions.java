package depot.optimizer.advice;

import depot.optimizer.advice.AdviceRun.Desk;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.Answer.Ending;
import depot.optimizer.advice.thumb.RulesOfThumb;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Future;

/** The questions about one depot's plan, handed in one after the other, and their answers. */
final class DepotQuestions {

    private final Depot depot;
    private final AdviceSettings settings;
    private final Desk desk;
    private final Resolver resolver;
    private final DepotProblem problem;
    private final List<Piece> pieces;
    private final List<Future<ReplayedPlan>> thumb = new ArrayList<>();
    private final List<Future<Reason>> reasons = new ArrayList<>();
    private final List<Future<LimitWorth>> limits = new ArrayList<>();
    private final List<Future<Alternative>> alternatives = new ArrayList<>();

    DepotQuestions(Scenario scenario, DepotPlan plan, AdviceSettings settings, Desk desk) {
        this.settings = settings;
        this.desk = desk;
        depot = scenario.depots().stream()
                .filter(each -> each.id().equals(plan.depot()))
                .findFirst()
                .orElseThrow();
        resolver = new Resolver(scenario, depot, new ReplayedPlan(plan, FleetReplay.runDepot(scenario, plan)));
        problem = resolver.problem();
        pieces = Piece.of(scenario, plan);
    }

    /** Hands in what belongs to a part, if it is asked for. */
    void ask(Part part) {
        if (settings.asks(part)) {
            switch (part) {
                case THUMB -> thumb.add(desk.submit(depot.id() + ", rules of thumb", this::byRulesOfThumb));
                case WHY -> pieces.stream().filter(piece -> piece.bought() > 0).forEach(this::askWhy);
                case WORTH -> Loosenings.of(resolver.scenario(), base().plan()).forEach(this::askWorth);
                case NEXT -> Variations.of(problem, pieces).forEach(this::askNext);
            }
        }
    }

    private ReplayedPlan base() {
        return resolver.base();
    }

    private ReplayedPlan byRulesOfThumb() {
        DepotResult result = RulesOfThumb.plan(resolver.scenario(), depot, settings.thumb());
        return new ReplayedPlan(result.plan(), result.replay());
    }

    private void askWhy(Piece piece) {
        reasons.add(desk.submit("%s, why %s".formatted(depot.id(), piece.item()), () -> {
            Optional<Binding> binding = new Bindings(problem, base()).of(piece);
            Answer without = resolver.harder(List.of(piece.atMost(0)));
            Optional<Answer> oneFewer = piece.count() > 1
                    ? Optional.of(resolver.harder(List.of(piece.atMost(piece.count() - 1))))
                    : Optional.empty();
            return new Reason(piece, binding, without, oneFewer);
        }));
    }

    private void askWorth(Loosening loosening) {
        String what = "%s, more room at %s".formatted(depot.id(), loosening.subject());
        limits.add(desk.submit(what, () -> new LimitWorth(loosening, resolver.easier(loosening.scenario()))));
    }

    private void askNext(Variation variation) {
        alternatives.add(desk.submit("%s, %s".formatted(depot.id(), variation.words()), () -> {
            Answer answer = resolver.harder(variation.limits());
            List<Piece> other = answer.plan()
                    .map(found -> Piece.of(resolver.scenario(), found.plan()))
                    .orElse(List.of());
            return new Alternative(variation, answer, other, within(answer), "");
        }));
    }

    private boolean within(Answer answer) {
        double allowed = settings.within() * base().certificate().cost();
        return answer.ending() == Ending.MET
                && answer.difference()
                        .map(difference -> difference.found() <= allowed)
                        .orElse(false);
    }

    /** All answers; waits for them. */
    DepotAdvice answers() {
        return new DepotAdvice(
                depot.id(),
                base(),
                pieces,
                thumb.stream().map(AdviceRun::await).findFirst(),
                reasons.stream().map(AdviceRun::await).toList(),
                limits.stream().map(AdviceRun::await).toList(),
                ranked(alternatives.stream().map(AdviceRun::await).toList()));
    }

    /** The cheapest first; of those that buy the same the first one stands for all. */
    private static List<Alternative> ranked(List<Alternative> found) {
        List<Alternative> ranked = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparing((Alternative each) -> each.answer().ending())
                        .thenComparingDouble(each -> each.answer()
                                .difference()
                                .map(Difference::found)
                                .orElse(0.0)))
                .forEach(each -> {
                    String same = ranked.stream()
                            .filter(before ->
                                    !each.pieces().isEmpty() && before.pieces().equals(each.pieces()))
                            .map(before -> before.variation().words())
                            .findFirst()
                            .orElse("");
                    ranked.add(new Alternative(each.variation(), each.answer(), each.pieces(), each.within(), same));
                });
        return List.copyOf(ranked);
    }
}
