package depot.optimizer.report.compare;

import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.compare.Comparison.Value;
import depot.optimizer.report.page.ComparisonPage;
import depot.optimizer.report.page.ComparisonPage.Section;
import depot.optimizer.report.page.LineChart;
import depot.optimizer.report.page.StepLine.Style;
import depot.optimizer.report.page.TableView;
import depot.optimizer.report.page.YearChart;
import depot.optimizer.report.page.YearChart.YearLine;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Makes the page of a comparison. */
final class ComparisonPages {

    private static final String PURCHASES = "purchases";

    private ComparisonPages() {}

    static ComparisonPage of(Comparison comparison, List<ComparedRun> runs) {
        List<Section> sections = new ArrayList<>();
        comparison.parts().forEach(part -> sections.add(section(comparison, part)));
        return new ComparisonPage(
                "Plans side by side",
                "%s. All are compared with the first, %s."
                        .formatted(
                                Figures.count(runs.size(), "run"),
                                comparison.runs().get(0)),
                comparison.warnings(),
                List.copyOf(sections),
                chart(runs));
    }

    /** Of purchases only what differs: the lists are long, and mostly alike. */
    private static Section section(Comparison comparison, Part part) {
        boolean purchases = part.id().equals(PURCHASES) || part.id().equals(RolloutParts.PURCHASES);
        Part shown = purchases ? part.differing() : part;
        int alike = part.lines().size() - shown.lines().size();
        String note = purchases ? "%s, alike in all runs, left out.".formatted(Figures.count(alike, "item")) : "";
        return new Section(part.id(), part.title(), note, table(comparison, shown));
    }

    private static TableView table(Comparison comparison, Part part) {
        TableView.Builder table =
                TableView.of(part.id() + "-table", part.title()).words("What", "Unit");
        comparison.runs().forEach(table::numbers);
        comparison.runs().stream().skip(1).forEach(run -> table.numbers(run + ": more than the first"));
        for (Line line : part.lines()) {
            List<String> cells = new ArrayList<>(List.of(line.what(), line.unit()));
            for (Value value : line.values()) {
                cells.add(value.read(line.decimals()));
            }
            for (int run = 1; run < line.values().size(); run++) {
                cells.add(line.signedDifference(run));
            }
            table.row(cells.toArray(new String[0]));
        }
        return table.build();
    }

    private static LineChart chart(List<ComparedRun> runs) {
        int years =
                runs.stream().mapToInt(run -> run.yearlyCosts().size()).max().orElse(1);
        List<YearLine> lines = new ArrayList<>();
        for (ComparedRun run : runs) {
            lines.add(new YearLine(run.name(), Style.of(lines.size()), addedUp(run.yearlyCosts(), years)));
        }
        return YearChart.of(
                "cost-chart",
                "Costs added up over the years",
                "Costs of each plan added up from now to the end of each year, not discounted. In its last year a plan gets back "
                        + "what its equipment is still worth; after that its line is level.",
                "Costs so far",
                runs.stream().map(run -> run.plan().currency()).distinct().collect(Collectors.joining(" or ")),
                lines);
    }

    private static List<Double> addedUp(List<Double> costs, int years) {
        List<Double> sums = new ArrayList<>();
        double sum = 0;
        for (int year = 0; year < years; year++) {
            sum += year < costs.size() ? costs.get(year) : 0;
            sums.add(sum);
        }
        return sums;
    }
}
