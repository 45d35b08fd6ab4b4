package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import underfoot.buildup.Caution;
import underfoot.buildup.LayerClass;
import underfoot.buildup.LayerNote;
import underfoot.buildup.Remedy;
import underfoot.buildup.StackLayer;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Shopping;
import underfoot.knowledge.Shopping.Row;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;

/** Makes the list that is taken to shops, by the rows of {@code shopping.yaml}. */
final class ShoppingMaker {
  private static final double MM2_PER_M2 = 1e6;
  private static final double MM_PER_M = 1000;
  private static final String PIECES = "pieces";

  private final Assessment assessment;
  private final BuildUp buildUp;
  private final Knowledge knowledge;
  private final Shopping shopping;
  private final Facts facts;
  private final Phrases phrases;
  private final Function<Amount, Optional<Packs>> packs;
  private final SetOuts.Laid laid;

  /**
   * @param packs in what packs a thing is sold
   * @param laid where tiles and boards lie
   */
  ShoppingMaker(
      Assessment assessment,
      BuildUp buildUp,
      Function<Amount, Optional<Packs>> packs,
      SetOuts.Laid laid) {
    this.assessment = assessment;
    this.buildUp = buildUp;
    this.knowledge = assessment.knowledge();
    this.shopping = knowledge.shopping();
    this.facts = buildUp.facts();
    this.phrases = new Phrases(knowledge.wording());
    this.packs = packs;
    this.laid = laid;
  }

  List<ShoppingLine> lines(List<Amount> amounts) {
    List<ShoppingLine> lines = new ArrayList<>();
    for (Amount amount : amounts) {
      shopping.find(amount.item().item()).ifPresent(row -> lines.add(material(row, amount)));
    }
    Set<String> said = said();
    Set<String> kinds =
        buildUp.stack().layers().stream().map(one -> one.kind().id()).collect(Collectors.toSet());
    for (Row row : shopping.rows()) {
      boolean laidHere = row.forLayers().stream().anyMatch(kinds::contains);
      if (!row.material() && (laidHere || row.on().stream().anyMatch(said::contains))) {
        lines.add(besides(row, amounts));
      }
    }
    lines.sort(Comparator.comparingInt(line -> shopping.shelves().indexOf(line.shelf())));
    return lines;
  }

  /** The wordings of what is warned of and put right, and of what is said of a layer. */
  private Set<String> said() {
    Set<String> said = new HashSet<>();
    assessment.of(Caution.class).forEach(one -> said.add(one.wording()));
    assessment.of(Remedy.class).forEach(one -> said.add(one.wording()));
    assessment.of(LayerNote.class).forEach(one -> said.add(one.wording()));
    return said;
  }

  private ShoppingLine material(Row row, Amount amount) {
    Optional<Packs> sold = amount.whole() ? packs.apply(amount) : Optional.empty();
    String unit = amount.item().unit();
    return new ShoppingLine(
        row.shelf(),
        row.name(),
        kind(row, amount.layer()),
        filled(row.size(), amount.layer()),
        amount.amount(),
        amount.whole() || Double.isNaN(amount.amount()) ? unit : unit + " for each m2",
        sold.map(Packs::count).orElse(0),
        sold.map(Packs::holds).orElse(0.0),
        sold.map(Packs::pieces).orElse(0),
        amount.layer().kind().name(),
        spare(amount));
  }

  /** What is lost, broken or kept for later, as far as it was reckoned with. */
  private String spare(Amount amount) {
    if (amount.piece() > 0 && amount.item().counted().equals("tiles")) {
      long order = Math.round(amount.amount() / amount.piece());
      long more = order - laid.tiles().map(one -> one.tiles()).orElse(order);
      return phrases.say("spare-pieces", "count", Long.toString(more));
    }
    if (amount.piece() > 0 || amount.item().waste().isEmpty()) {
      return "";
    }
    String waste = amount.item().waste();
    boolean ofFact = waste.startsWith("the ");
    String percent =
        ofFact
            ? Wording.known('[' + waste.substring(4) + ']', knowledge.figures(), facts)
            : knowledge.figures().get(waste).text();
    return percent.isEmpty() ? "" : phrases.say("spare-share", "percent", percent);
  }

  private ShoppingLine besides(Row row, List<Amount> amounts) {
    double rate = row.rate().isEmpty() ? 1 : knowledge.figures().get(row.rate()).value();
    double amount = Math.ceil(number(row.by(), amounts) * rate);
    double pack = row.pack().isEmpty() ? 0 : knowledge.figures().get(row.pack()).value();
    String forWhat =
        buildUp.stack().layers().stream()
            .filter(one -> row.forLayers().contains(one.kind().id()))
            .map(one -> one.kind().name())
            .findFirst()
            .orElse("");
    StackLayer layer =
        buildUp.stack().layers().stream()
            .filter(one -> row.forLayers().contains(one.kind().id()))
            .findFirst()
            .orElse(buildUp.stack().layers().get(0));
    return new ShoppingLine(
        row.shelf(),
        row.name(),
        kind(row, layer),
        filled(row.size(), layer),
        amount,
        row.by().equals("perimeter") ? "m" : PIECES,
        pack > 0 && !Double.isNaN(amount) ? (int) Math.ceil(amount / pack) : 0,
        pack,
        0,
        row.shelf().equals(shopping.shelves().get(0)) || pack > 0 ? forWhat : "",
        "");
  }

  private double number(String by, List<Amount> amounts) {
    return switch (by) {
      case "doors" -> Math.max(1, facts.abouts("door").size());
      case "screws" ->
          amounts.stream()
              .filter(one -> one.item().counted().equals("screws"))
              .mapToDouble(Amount::amount)
              .sum();
      case "tiles" -> tiles();
      case "perimeter" -> facts.number("perimeter") / MM_PER_M;
      case "area" -> facts.number("area");
      default -> 1;
    };
  }

  private double tiles() {
    if (laid.tiles().isPresent()) {
      return laid.tiles().get().tiles();
    }
    return facts.number("area")
        * MM2_PER_M2
        / (facts.number("longest edge") * facts.number("shortest edge"));
  }

  private String kind(Row row, StackLayer layer) {
    String kind = filled(row.kind(), layer);
    return kind.isEmpty() ? layer.kind().material() : kind;
  }

  private String filled(String text, StackLayer layer) {
    String classes = classes(layer.kind().id());
    if (text.contains("[class]") && classes.isEmpty()) {
      return "";
    }
    String mine =
        text.replace("[class]", classes)
            .replace("[material]", layer.kind().material())
            .replace("[thickness]", Texts.mm(layer.thickness().mean()));
    return Wording.known(mine, knowledge.figures(), facts);
  }

  private String classes(String layer) {
    List<String> asked =
        assessment.of(LayerClass.class).stream()
            .filter(one -> one.layer().equals(layer))
            .map(LayerClass::grade)
            .sorted()
            .toList();
    return String.join(", ", MaterialClasses.strictest(knowledge, asked));
  }
}
