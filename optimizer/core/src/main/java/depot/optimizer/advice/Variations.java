package depot.optimizer.advice;

import depot.optimizer.advice.Piece.Kind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.scenario.PackType;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lists structures that a depot's plan does not have: each leaves out, or has fewer of, something that the plan has. */
final class Variations {

    private final DepotProblem problem;
    private final List<Piece> pieces;
    private final List<Variation> variations = new ArrayList<>();

    private Variations(DepotProblem problem, List<Piece> pieces) {
        this.problem = problem;
        this.pieces = pieces;
    }

    static List<Variation> of(DepotProblem problem, List<Piece> pieces) {
        Variations list = new Variations(problem, pieces);
        list.none("no new circuits", Kind.CIRCUIT);
        list.none("no bigger supply", Kind.SUPPLY);
        list.none("no load sharing", Kind.UNIT);
        list.nothingOnTheWay();
        list.packTypes();
        list.fewer("fewer packs", Kind.PACK);
        list.fewer("fewer chargers", Kind.CHARGER);
        list.chargerTypes();
        return List.copyOf(list.variations);
    }

    private int count(Kind kind) {
        return pieces.stream()
                .filter(piece -> piece.kind() == kind)
                .mapToInt(Piece::count)
                .sum();
    }

    private Map<String, Integer> byItem(Kind kind) {
        Map<String, Integer> counts = new TreeMap<>();
        pieces.stream()
                .filter(piece -> piece.kind() == kind)
                .forEach(piece -> counts.merge(piece.item(), piece.count(), Integer::sum));
        return counts;
    }

    private static PieceLimit all(Kind kind, int most) {
        return kind.atMost(PieceLimit.ANY, PieceLimit.ANY, most);
    }

    private void none(String words, Kind kind) {
        if (count(kind) > 0) {
            variations.add(new Variation(words, List.of(all(kind, 0))));
        }
    }

    private void fewer(String words, Kind kind) {
        if (count(kind) > 1) {
            variations.add(new Variation(words, List.of(all(kind, count(kind) - 1))));
        }
    }

    private void nothingOnTheWay() {
        if (count(Kind.PORTABLE) + count(Kind.BANK) > 0) {
            variations.add(
                    new Variation("nothing charged on the way", List.of(all(Kind.PORTABLE, 0), all(Kind.BANK, 0))));
        }
    }

    /** A type goes where another of its family could take its place. */
    private void packTypes() {
        Map<String, Integer> counts = byItem(Kind.PACK);
        for (PackType type : problem.packTypes()) {
            boolean others = problem.packTypes().stream()
                    .anyMatch(other -> !other.equals(type) && other.family().equals(type.family()));
            if (counts.containsKey(type.id()) && others) {
                variations.add(new Variation(
                        "no packs " + type.id(), List.of(Kind.PACK.atMost(type.id(), PieceLimit.ANY, 0))));
            }
        }
    }

    private void chargerTypes() {
        byItem(Kind.CHARGER).forEach((type, count) -> {
            variations.add(new Variation("no chargers " + type, List.of(Kind.CHARGER.atMost(type, PieceLimit.ANY, 0))));
            if (count > 1) {
                variations.add(new Variation(
                        "one charger " + type + " fewer",
                        List.of(Kind.CHARGER.atMost(type, PieceLimit.ANY, count - 1))));
            }
        });
    }
}
