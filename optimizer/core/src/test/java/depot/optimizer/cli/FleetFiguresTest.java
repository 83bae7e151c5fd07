package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report of a fleet with quantity prices: its tables come to what the plan costs, with what the fleet pays beside its depots. */
class FleetFiguresTest {

    private static final double CENTS_OF_LINES = 0.05;

    @TempDir
    private Path folder;

    @Test
    void reductionsAreInEveryTotal() throws IOException {
        Path run = RerunFrame.plan(
                TwoDepots.inPhases("first,0,4000", "second,2,")
                        .table("price_tiers.csv", "item,from_count,price\npack-500,3,250\n"),
                folder);
        Plan plan = PlanJson.read(run.resolve(PlanJson.FILE_NAME));
        String report = Files.readString(run.resolve("report.html"));

        double reductions =
                plan.fleetCosts().stream().mapToDouble(FleetCost::presentCost).sum();
        assertThat(reductions).isNegative();
        double cost = plan.certificate().cost();
        assertThat(total(report, "fleet-costs").get(0)).isCloseTo(cost, within(CENTS_OF_LINES));
        assertThat(total(report, "depot-table").get(1)).isCloseTo(cost, within(CENTS_OF_LINES));
        // What all phases spend is what the rollout's table says of each.
        double spent = rows(report, "phases").stream()
                .mapToDouble(row -> amounts(row).get(3))
                .sum();
        assertThat(total(report, "depot-table").get(0)).isCloseTo(spent, within(CENTS_OF_LINES));
    }

    private static List<Double> total(String report, String table) {
        String whole = table(report, table);
        return amounts(whole.substring(whole.indexOf("<tfoot>")));
    }

    private static List<String> rows(String report, String table) {
        String whole = table(report, table);
        String body = whole.substring(whole.indexOf("<tbody>"), whole.indexOf("</tbody>"));
        return Pattern.compile("<tr>(.*?)</tr>", Pattern.DOTALL)
                .matcher(body)
                .results()
                .map(row -> row.group(1))
                .toList();
    }

    private static String table(String report, String id) {
        int from = report.indexOf("id=\"" + id + "\"");
        assertThat(from).as(id).isNotNegative();
        return report.substring(from, report.indexOf("</table>", from));
    }

    private static List<Double> amounts(String cells) {
        return Pattern.compile("class=\"number\">\\s*([0-9,.]+)\\s*<")
                .matcher(cells)
                .results()
                .map(amount -> Double.valueOf(amount.group(1).replace(",", "")))
                .toList();
    }
}
