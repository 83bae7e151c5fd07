package depot.optimizer.report.table;

import depot.optimizer.advice.Alternative;
import depot.optimizer.advice.Answer;
import depot.optimizer.advice.Binding;
import depot.optimizer.advice.DepotAdvice;
import depot.optimizer.advice.Difference;
import depot.optimizer.advice.FleetAdvice;
import depot.optimizer.advice.LimitWorth;
import depot.optimizer.advice.Piece;
import depot.optimizer.advice.Reason;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.replay.Violation;
import depot.optimizer.report.table.CsvTable.Row;
import depot.optimizer.report.text.DayNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables about a plan's questions. Parts that were not asked for have only a heading. */
public final class AdviceTables {

    private final AdviceFigures figures;
    private final String currency;
    private final int decimals;
    private final CsvTable thumb = new CsvTable(AdviceLayouts.THUMB);
    private final CsvTable broken = new CsvTable(AdviceLayouts.BROKEN);
    private final CsvTable why = new CsvTable(AdviceLayouts.WHY);
    private final CsvTable worth = new CsvTable(AdviceLayouts.WORTH);
    private final CsvTable next = new CsvTable(AdviceLayouts.NEXT);
    private final CsvTable pieces = new CsvTable(AdviceLayouts.PIECES);

    private AdviceTables(AdviceFigures figures) {
        this.figures = figures;
        currency = figures.amounts().code();
        decimals = figures.amounts().decimals();
    }

    /** All tables. */
    public static List<CsvTable> of(AdviceFigures figures) {
        AdviceTables tables = new AdviceTables(figures);
        for (DepotAdvice depot : figures.advice().depots()) {
            depot.thumb().ifPresent(plan -> tables.thumb(depot, plan));
            depot.reasons().forEach(reason -> tables.why(depot, reason));
            depot.limits().forEach(limit -> tables.worth(depot, limit));
            depot.alternatives().forEach(other -> tables.next(depot, other));
        }
        List<CsvTable> all = new ArrayList<>(
                List.of(tables.thumb, tables.broken, tables.why, tables.worth, tables.next, tables.pieces));
        figures.advice().fleet().map(tables::shared).ifPresent(all::add);
        return List.copyOf(all);
    }

    private CsvTable shared(FleetAdvice fleet) {
        for (Violation violation : fleet.together()) {
            broken.row(row -> row.text("fleet")
                    .text(Words.of(violation.kind()))
                    .number(0, 3)
                    .text(violation.message()));
        }
        CsvTable table = new CsvTable(AdviceLayouts.SHARED);
        for (FleetAdvice.LimitUse use : fleet.limits()) {
            table.row(row -> {
                row.text(use.limit())
                        .number(use.most(), 2)
                        .number(use.used(), 2)
                        .number(use.left(), 2);
                use.price().ifPresentOrElse(price -> row.number(price, 6), row::empty);
                use.more().ifPresentOrElse(more -> row.number(more.step(), 2), row::empty);
                difference(
                        row,
                        use.more().flatMap(more -> more.answer().difference()).map(AdviceWords::turned));
                row.text(figures.words().price(use)).text(currency);
            });
        }
        return table;
    }

    private void thumb(DepotAdvice depot, ReplayedPlan plan) {
        double planned = depot.planned().certificate().cost();
        double cost = plan.certificate().cost();
        thumb.row(row -> row.text(depot.depot())
                .money(planned, decimals)
                .money(cost, decimals)
                .money(cost - planned, decimals)
                .exact(figures.atOnce(depot.planned()))
                .exact(figures.atOnce(plan))
                .number(plan.days(), 3)
                .number(BrokenRules.daysKept(plan), 3)
                .yesNo(plan.proven())
                .text(currency));
        for (BrokenRules rule : BrokenRules.of(plan)) {
            broken.row(row -> row.text(depot.depot())
                    .text(Words.of(rule.kind()))
                    .number(rule.daysPerYear(), 3)
                    .text(rule.first()));
        }
        pieces(depot, "rules of thumb", figures.pieces(plan));
    }

    private void pieces(DepotAdvice depot, String plan, List<Piece> other) {
        for (AdviceFigures.Differing item : AdviceFigures.differing(depot.pieces(), other)) {
            pieces.row(row -> row.text(depot.depot())
                    .text(plan)
                    .text(AdviceWords.of(item.item().kind()))
                    .text(item.item().name())
                    .count(item.planned())
                    .count(item.other())
                    .count(item.other() - item.planned()));
        }
    }

    private void why(DepotAdvice depot, Reason reason) {
        Piece piece = reason.piece();
        why.row(row -> {
            row.text(reason.phase())
                    .text(depot.depot())
                    .text(AdviceWords.of(piece.kind()))
                    .text(piece.item())
                    .text(piece.where())
                    .count(piece.count())
                    .count(piece.bought());
            binding(row, reason.binding());
            answer(row, Optional.of(reason.without()));
            answer(row, reason.oneFewer());
            answer(row, reason.later());
            row.text(currency);
        });
    }

    private static void binding(Row row, Optional<Binding> binding) {
        binding.ifPresentOrElse(
                moment -> row.text(AdviceWords.of(moment.limit()))
                        .number(moment.used(), 3)
                        .number(moment.there(), 3)
                        .text(DayNames.of(moment.days()))
                        .time(moment.fromMinute())
                        .time(moment.toMinute())
                        .text(String.join(", ", moment.crews())),
                () -> blank(row, 7));
    }

    private void answer(Row row, Optional<Answer> answer) {
        row.text(answer.map(found -> AdviceWords.of(found.ending())).orElse(""));
        difference(row, answer.flatMap(Answer::difference));
        row.text(answer.map(figures.words()::costs).orElse(""));
    }

    private void difference(Row row, Optional<Difference> difference) {
        difference.ifPresentOrElse(
                found -> {
                    row.money(found.found(), decimals);
                    known(row, found.least());
                    known(row, found.most());
                },
                () -> blank(row, 3));
    }

    private void known(Row row, double amount) {
        if (Double.isFinite(amount)) {
            row.money(amount, decimals);
        } else {
            row.empty();
        }
    }

    private static void blank(Row row, int cells) {
        for (int i = 0; i < cells; i++) {
            row.empty();
        }
    }

    private void worth(DepotAdvice depot, LimitWorth limit) {
        Optional<Difference> saving = limit.answer().difference().map(AdviceWords::turned);
        worth.row(row -> {
            row.text(depot.depot())
                    .text(AdviceWords.of(limit.loosening().limit()))
                    .text(limit.loosening().subject())
                    .count(limit.loosening().step())
                    .text(limit.loosening().limit().unit())
                    .text(AdviceWords.of(limit.answer().ending()));
            difference(row, saving);
            saving.ifPresentOrElse(found -> row.money(figures.perYear(found.found()), decimals), row::empty);
            row.yesNo(saving.map(Difference::told).orElse(false))
                    .text(figures.words().saves(limit.answer()))
                    .text(currency);
        });
    }

    private void next(DepotAdvice depot, Alternative other) {
        double planned = depot.planned().certificate().cost();
        Optional<Difference> difference = other.answer().difference();
        next.row(row -> {
            row.text(depot.depot())
                    .text(other.variation().words())
                    .text(AdviceWords.of(other.answer().ending()))
                    .money(planned, decimals);
            difference.ifPresentOrElse(
                    found -> row.money(planned + found.found(), decimals)
                            .money(found.found(), decimals)
                            .number(planned == 0 ? 0 : 100 * found.found() / planned, 2)
                            .money(found.least(), decimals)
                            .money(found.most(), decimals),
                    () -> blank(row, 5));
            row.yesNo(other.within())
                    .text(other.sameAs())
                    .text(figures.planFiles().getOrDefault(other, ""))
                    .text(figures.words().costs(other.answer()))
                    .text(currency);
        });
        if (difference.isPresent() && other.sameAs().isEmpty()) {
            pieces(depot, other.variation().words(), other.pieces());
        }
    }
}
