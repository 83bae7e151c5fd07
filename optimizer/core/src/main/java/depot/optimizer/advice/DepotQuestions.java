package depot.optimizer.advice;

import depot.optimizer.advice.AdviceRun.Desk;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.Answer.Ending;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.PieceLimit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;

/** The questions about one depot's plan, handed in one after the other, and their answers. */
final class DepotQuestions {

    private final String depot;
    private final AdviceSettings settings;
    private final Desk desk;
    private final Resolving resolver;
    private final Callable<ReplayedPlan> byRulesOfThumb;
    private final List<Piece> pieces;
    private final List<Future<ReplayedPlan>> thumb = new ArrayList<>();
    private final List<Future<Reason>> reasons = new ArrayList<>();
    private final List<Future<LimitWorth>> limits = new ArrayList<>();
    private final List<Future<Alternative>> alternatives = new ArrayList<>();

    /**
     * @param byRulesOfThumb makes the depot's plan by rules of thumb
     */
    DepotQuestions(Resolving resolver, Callable<ReplayedPlan> byRulesOfThumb, AdviceSettings settings, Desk desk) {
        this.resolver = resolver;
        this.byRulesOfThumb = byRulesOfThumb;
        this.settings = settings;
        this.desk = desk;
        depot = base().plan().depot();
        pieces = Piece.of(resolver.scenario(), base().last());
    }

    /** Hands in what belongs to a part, if it is asked for. */
    void ask(Part part) {
        if (settings.asks(part)) {
            switch (part) {
                case THUMB -> thumb.add(desk.submit(depot + ", rules of thumb", byRulesOfThumb));
                case WHY -> askWhy();
                case WORTH -> Loosenings.of(resolver.scenario(), base().last()).forEach(this::askWorth);
                case NEXT -> Variations.of(last(), pieces).forEach(this::askNext);
            }
        }
    }

    private ReplayedPlan base() {
        return resolver.base();
    }

    private DepotProblem last() {
        return resolver.problems().get(resolver.problems().size() - 1);
    }

    private void askWhy() {
        for (int f = 0; f < base().plans().size(); f++) {
            for (Piece piece : pieces(f)) {
                if (piece.bought() > 0) {
                    askWhy(f, piece);
                }
            }
        }
    }

    private List<Piece> pieces(int phase) {
        Optional<DepotPlan> before =
                phase == 0 ? Optional.empty() : Optional.of(base().plans().get(phase - 1));
        return Piece.of(resolver.scenario(), base().plans().get(phase), before);
    }

    private void askWhy(int phase, Piece piece) {
        boolean single = base().plans().size() == 1;
        String when = single ? "" : " in " + base().plans().get(phase).phase();
        int all = single ? piece.count() : piece.bought();
        boolean last = phase == base().plans().size() - 1;
        reasons.add(desk.submit("%s, why %s%s".formatted(depot, piece.item(), when), () -> {
            Optional<Binding> binding = new Bindings(resolver.problems().get(phase), base().phase(phase)).of(piece);
            Answer without = resolver.harder(fewer(phase, Integer.MAX_VALUE, piece, all));
            Optional<Answer> oneFewer = all > 1
                    ? Optional.of(resolver.harder(fewer(phase, Integer.MAX_VALUE, piece, 1)))
                    : Optional.empty();
            Optional<Answer> later =
                    last ? Optional.empty() : Optional.of(resolver.harder(fewer(phase, phase, piece, all)));
            return new Reason(base().plans().get(phase).phase(), piece, binding, without, oneFewer, later);
        }));
    }

    /** So many fewer than the plan has, in some of the phases. */
    private List<List<PieceLimit>> fewer(int from, int to, Piece piece, int fewer) {
        List<List<PieceLimit>> limits = new ArrayList<>();
        for (int f = 0; f < base().plans().size(); f++) {
            int there = pieces(f).stream()
                    .filter(piece::alike)
                    .mapToInt(Piece::count)
                    .sum();
            limits.add(f >= from && f <= to ? List.of(piece.atMost(Math.max(0, there - fewer))) : List.of());
        }
        return limits;
    }

    private void askWorth(Loosening loosening) {
        String what = "%s, more room at %s".formatted(depot, loosening.subject());
        limits.add(desk.submit(what, () -> new LimitWorth(loosening, resolver.easier(loosening.scenario()))));
    }

    private void askNext(Variation variation) {
        alternatives.add(desk.submit("%s, %s".formatted(depot, variation.words()), () -> {
            Answer answer = resolver.harder(resolver.problems().stream()
                    .map(phase -> variation.limits())
                    .toList());
            List<Piece> other = answer.plan()
                    .map(found -> Piece.of(resolver.scenario(), found.last()))
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
                depot,
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
