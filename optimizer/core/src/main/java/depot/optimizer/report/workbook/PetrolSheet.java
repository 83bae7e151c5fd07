package depot.optimizer.report.workbook;

import depot.optimizer.finance.CrewPetrol;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.scenario.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.dhatim.fastexcel.Workbook;

/** What each crew would burn and pay in a year on petrol, at today's prices, and in which phases it works with packs. */
final class PetrolSheet {

    private static final String NAME = "Petrol";
    private static final int HEAD = 2;
    private static final int LITRES = 1;
    private static final int STATED = 2;
    private static final int FUEL = 3;
    private static final int UPKEEP = 4;
    private static final int FIRST_PHASE = 5;

    private final SheetPen pen;
    private final int first = HEAD + 1;
    private final int last;

    /**
     * @param crews all that work with packs in some phase
     * @param withPacks by phase, those that do
     */
    PetrolSheet(
            Workbook workbook,
            InputsSheet inputs,
            PlanLines lines,
            List<CrewPetrol> crews,
            List<Set<String>> withPacks) {
        pen = new SheetPen(workbook, NAME);
        pen.title("Staying on petrol: a year at today's prices");
        pen.width(0, 24);
        for (int column = 1; column < FIRST_PHASE + withPacks.size(); column++) {
            pen.width(column, 20);
        }
        List<String> heads = new ArrayList<>(
                List.of("Crew", "Petrol (litres a year)", "Petrol cost as stated", "Of this fuel", "Of this upkeep"));
        for (Phase phase : lines.phases()) {
            heads.add(lines.phases().size() == 1 ? "Works with packs" : "Works with packs in " + phase.id());
        }
        pen.headings(HEAD, heads.toArray(new String[0]));
        int row = first;
        for (CrewPetrol crew : crews) {
            crew(row, crew, inputs);
            for (int f = 0; f < withPacks.size(); f++) {
                pen.fixed(row, FIRST_PHASE + f, withPacks.get(f).contains(crew.crew()) ? 1 : 0, Look.PLAIN);
            }
            row++;
        }
        last = row - 1;
    }

    private void crew(int row, CrewPetrol crew, InputsSheet inputs) {
        pen.text(row, 0, crew.crew());
        String litres = pen.input(row, LITRES, crew.litres(), Look.PLAIN);
        String stated = pen.input(row, STATED, crew.statedCost(), Look.MONEY);
        String burnt = litres + "*" + inputs.settings().petrolPrice();
        String fuel = pen.formula(
                row,
                FUEL,
                Look.MONEY,
                "IF(ISNUMBER(%s),IF(%s>0,MIN(%s,%s),%s),%s)"
                        .formatted(inputs.settings().petrolPrice(), stated, burnt, stated, burnt, stated));
        pen.formula(row, UPKEEP, Look.MONEY, "MAX(0,%s-%s)".formatted(stated, fuel));
    }

    /** Litres that the crews with packs would burn in a year of a phase. */
    String litres(int phase) {
        return sum(LITRES, phase);
    }

    /** What these would cost at today's price. */
    String fuel(int phase) {
        return sum(FUEL, phase);
    }

    /** What these crews' petrol tools would cost beside it. */
    String upkeep(int phase) {
        return sum(UPKEEP, phase);
    }

    private String sum(int column, int phase) {
        return last < first ? "0" : "SUMPRODUCT(%s,%s)".formatted(column(column), column(FIRST_PHASE + phase - 1));
    }

    private String column(int column) {
        return pen.range(first, column, last, column);
    }
}
