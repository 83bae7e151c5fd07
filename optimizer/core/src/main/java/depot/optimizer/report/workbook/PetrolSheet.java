package depot.optimizer.report.workbook;

import depot.optimizer.finance.CrewPetrol;
import depot.optimizer.report.workbook.SheetPen.Look;
import java.util.List;
import org.dhatim.fastexcel.Workbook;

/** What each crew would burn and pay in a year on petrol, at today's prices. */
final class PetrolSheet {

    private static final String NAME = "Petrol";
    private static final int HEAD = 2;

    private final SheetPen pen;
    private final int first = HEAD + 1;
    private final int last;

    PetrolSheet(Workbook workbook, InputsSheet inputs, List<CrewPetrol> crews) {
        pen = new SheetPen(workbook, NAME);
        pen.title("Staying on petrol: a year at today's prices");
        pen.width(0, 24);
        for (int column = 1; column <= 4; column++) {
            pen.width(column, 20);
        }
        pen.headings(HEAD, "Crew", "Petrol (litres a year)", "Petrol cost as stated", "Of this fuel", "Of this upkeep");
        int row = first;
        for (CrewPetrol crew : crews) {
            pen.text(row, 0, crew.crew());
            String litres = pen.input(row, 1, crew.litres(), Look.PLAIN);
            String stated = pen.input(row, 2, crew.statedCost(), Look.MONEY);
            String burnt = litres + "*" + inputs.petrolPrice();
            String fuel = pen.formula(
                    row,
                    3,
                    Look.MONEY,
                    "IF(ISNUMBER(%s),IF(%s>0,MIN(%s,%s),%s),%s)"
                            .formatted(inputs.petrolPrice(), stated, burnt, stated, burnt, stated));
            pen.formula(row, 4, Look.MONEY, "MAX(0,%s-%s)".formatted(stated, fuel));
            row++;
        }
        last = Math.max(first, row - 1);
    }

    String litres() {
        return sum(1);
    }

    String fuel() {
        return sum(3);
    }

    String upkeep() {
        return sum(4);
    }

    private String sum(int column) {
        return "SUM(" + pen.range(first, column, last, column) + ")";
    }
}
