package underfoot.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Phrases;
import underfoot.reasoning.Floors;
import underfoot.report.OpinionText;
import underfoot.report.TextPage;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.Scenario;

/** Whatever is stacked on whatever floor, there is an answer, and its texts are whole. */
class AnyProposalIsAnsweredTest {
  private static final long SEED = 5_2026L;
  private static final int PROPOSALS = Integer.getInteger("proposals", 80);
  private static final int MOST_LAYERS = 9;

  @Test
  void a_proposal_put_together_at_random_is_answered_in_whole_sentences() throws Exception {
    Random random = new Random(SEED);
    List<Scenario> floors = new ArrayList<>();
    for (Path file : Floors.examples()) {
      floors.add(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    }
    for (int i = 0; i < PROPOSALS; i++) {
      Scenario floor = floors.get(random.nextInt(floors.size()));
      String yaml = yaml(random);
      String told = "seed " + SEED + ", " + floor.name() + "\n" + yaml;
      Opinion opinion = Proposals.judge(floor, Proposals.read("proposal", yaml));
      Stream.concat(
              opinion.whole().stream(),
              opinion.layers().stream().flatMap(layer -> layer.items().stream()))
          .forEach(
              item -> {
                assertThat(item.because()).as(told).isNotEmpty();
                assertThat(item.text() + item.consequence() + item.remedy())
                    .as(told)
                    .doesNotContain("an unknown ", "[", "{");
                if (item.judgement().isFault()) {
                  assertThat(item.consequence()).as(item.id()).isNotBlank();
                  assertThat(item.remedy()).as(item.id()).isNotBlank();
                }
              });
      assertThat(opinion.layers()).as(told).allMatch(layer -> layer.judgement() != null);
      TextPage page = new TextPage(80, false);
      OpinionText.write(opinion, new Phrases(Floors.advisor().knowledge().wording()), page);
      assertThat(page.text()).as(told).doesNotContain("null", "NaN", "<", ">");
      assertThat(page.text().lines()).as(told).allMatch(line -> line.length() <= 80);
    }
  }

  private static String yaml(Random random) {
    StringBuilder yaml = new StringBuilder("proposal: at random\nlayers:\n");
    int layers = 1 + random.nextInt(MOST_LAYERS);
    for (int i = 0; i < layers; i++) {
      String first = "  - ";
      for (FactDefinition fact : Proposals.book().definitions()) {
        boolean needed = fact.key().equals("layers[].kind");
        if (fact.ofEntries()
            && !fact.key().endsWith(".name")
            && (needed || random.nextInt(3) == 0)) {
          yaml.append(first)
              .append(fact.word())
              .append(": ")
              .append(value(fact, random))
              .append('\n');
          first = "    ";
        }
      }
    }
    for (FactDefinition fact : Proposals.book().definitions()) {
      if (!fact.ofEntries() && !fact.required() && random.nextInt(3) == 0) {
        yaml.append(fact.key()).append(": ").append(value(fact, random)).append('\n');
      }
    }
    return yaml.toString();
  }

  private static String value(FactDefinition fact, Random random) {
    return switch (fact.kind()) {
      case CHOICE, CHOICES -> "\"" + fact.of().get(random.nextInt(fact.of().size())) + "\"";
      case QUANTITY -> {
        double share = random.nextDouble();
        double most = Math.min(fact.most(), 1000);
        double number =
            Math.round((fact.least() + share * share * (most - fact.least())) * 10) / 10.0;
        String unit = fact.example().replaceAll("^[0-9.]+ ?", "");
        yield Math.max(number, fact.least()) + " " + unit;
      }
      default -> "words";
    };
  }
}
