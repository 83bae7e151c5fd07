package depot.optimizer.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import depot.optimizer.check.Finding.Severity;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the bytes, loading gives findings, never an exception. */
class FuzzTest {
    private static final int TRIALS = 400;
    private static final String LETTERS = "\"\",,\n\r;:-.0159eEMx{}[]\\ \t\0\u00e9\uFEFF";

    @TempDir
    Path folder;

    private static ScenarioText rich() {
        return ScenarioText.tiny()
                .setting("solve", "{\"gap\": 0.01}")
                .table("base_load.csv", "depot,circuit,days,from,to,amps\nnorth,north-1,Mon-Fri,06:00,07:00,3\n")
                .table("tariff_terms.csv", "tariff,standing_per_day\nflat,0.5\n")
                .table(
                        "sharing_units.csv",
                        "unit_type,outlets,amps,priority_outlets,price,life_years\nshare,6,16,1,500,10\n")
                .table("owned.csv", "depot,circuit,crew,item,count\nnorth,north-1,,duo,1\nnorth,north-1,,share,1\n")
                .table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-1,north,0\n")
                .column("crews.csv", "petrol_cost_per_year", "900")
                .column("depots.csv", "region", "Upland")
                .table("phases.csv", "phase,year,budget\nfirst,0,9000\nsecond,2,\n")
                .table("region_budgets.csv", "phase,region,budget\nfirst,Upland,500\n")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,first,second\n")
                .table("price_tiers.csv", "item,from_count,price\nduo,5,190\nduo,9,180\n")
                .table("delivery_limits.csv", "item,phase,count\nduo,first,5\n")
                .table("moves.csv", "item,cost\nduo,15\n");
    }

    @Test
    void mutatedBytesNeverRaiseAnException() throws IOException {
        Random random = new Random(20_26);
        rich().write(folder);
        List<String> files = names();
        for (int trial = 0; trial < TRIALS; trial++) {
            Path file = folder.resolve(files.get(random.nextInt(files.size())));
            byte[] original = Files.readAllBytes(file);
            byte[] mutated = mutate(original, random);
            Files.write(file, mutated);
            String text = new String(mutated, StandardCharsets.ISO_8859_1);
            assertThatCode(() -> {
                        LoadedScenario loaded = ScenarioLoader.load(folder);
                        boolean error =
                                loaded.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
                        assertThat(loaded.scenario().isPresent()).isNotEqualTo(error);
                    })
                    .as("trial %d, %s:%n%s", trial, file.getFileName(), text)
                    .doesNotThrowAnyException();
            Files.write(file, original);
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    /** Drops, doubles or swaps lines, so that rows stay well formed and the rules between rows are tried. */
    private static byte[] withLinesMoved(byte[] bytes, Random random) {
        List<String> lines = new ArrayList<>(List.of(new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)));
        int line = random.nextInt(lines.size());
        int other = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.remove(line);
            case 1 -> lines.add(line, lines.get(other));
            default -> Collections.swap(lines, line, other);
        }
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] mutate(byte[] original, Random random) {
        byte[] bytes = original.clone();
        int edits = 1 + random.nextInt(3);
        for (int edit = 0; edit < edits && bytes.length > 0; edit++) {
            int place = random.nextInt(bytes.length);
            switch (random.nextInt(6)) {
                case 0 -> bytes[place] = (byte) random.nextInt(256);
                case 1 -> bytes[place] = (byte) LETTERS.charAt(random.nextInt(LETTERS.length()));
                case 2 -> bytes = Arrays.copyOf(bytes, place);
                case 3, 4 -> bytes = withLinesMoved(bytes, random);
                default -> {
                    int from = random.nextInt(bytes.length);
                    int length = Math.min(random.nextInt(12), bytes.length - Math.max(from, place));
                    System.arraycopy(bytes, from, bytes, place, length);
                }
            }
        }
        return bytes;
    }
}
