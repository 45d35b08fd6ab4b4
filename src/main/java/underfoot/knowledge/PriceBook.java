package underfoot.knowledge;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import underfoot.quantity.Dimension;
import underfoot.quantity.NotAQuantity;
import underfoot.quantity.Quantity;
import underfoot.scenario.RuleFiles;

/** What things cost, and in what packs they are sold. */
public final class PriceBook {
  private static final String SHIPPED = "figures/price-book.yaml";
  private static final Pattern BEGINS =
      Pattern.compile("\\s*\\{?\\s*[\"']?currency[\"']?\\s*:\\s*[\"']?[A-Z]{3}\\b.*");

  /** A whole part of six digits and a fraction of three at most, so that no pack is endless. */
  private static final Pattern PACK = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,3})?) *(\\S*)");

  /** What work is called in a price book. */
  public static final String LABOUR = "labour";

  private static final String HOUR = "h";

  private final String currency;
  private final Map<String, Price> byItem;
  private final boolean invented;

  private PriceBook(String currency, Map<String, Price> byItem, boolean invented) {
    this.currency = currency;
    this.byItem = byItem;
    this.invented = invented;
  }

  /**
   * The price of one pack.
   *
   * @param pack how much a pack holds
   * @param unit the unit of that
   * @param price the price of a pack, in the book's currency
   */
  public record Price(double pack, String unit, double price) {}

  /** The demonstration price book that comes with the program; its prices are invented. */
  public static PriceBook shipped(RuleFiles files, Materials materials) throws KnowledgeFault {
    return read(files, SHIPPED, materials, true);
  }

  /**
   * A person's own price book.
   *
   * @param name its name, for messages
   * @param content what stands in it
   * @param materials what there is to buy, each in its unit
   * @throws KnowledgeFault if it cannot be used; of a file that is no price book it quotes nothing
   */
  public static PriceBook own(String name, byte[] content, Materials materials)
      throws KnowledgeFault {
    String first =
        new String(content, StandardCharsets.UTF_8)
            .lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#") && !line.equals("---"))
            .findFirst()
            .orElse("");
    if (!BEGINS.matcher(first).matches()) {
      throw new KnowledgeFault(
          name,
          0,
          "it is no price book, which begins with currency: GBP and goes on with a line for each"
              + " item, such as base primer: {pack: 5 L, price: 28 GBP}");
    }
    RuleFiles one =
        new RuleFiles() {
          @Override
          public List<String> list(String folder, String suffix) {
            return List.of(name);
          }

          @Override
          public List<String> all() {
            return List.of(name);
          }

          @Override
          public InputStream open(String path) {
            return new ByteArrayInputStream(content);
          }
        };
    return read(one, name, materials, false);
  }

  private static PriceBook read(RuleFiles files, String path, Materials materials, boolean invented)
      throws KnowledgeFault {
    Map<String, String> units = new HashMap<>(Map.of(LABOUR, HOUR));
    materials.all().forEach(item -> units.put(item.item(), item.unit()));
    String currency = "";
    Map<String, Price> byItem = new LinkedHashMap<>();
    List<KnowledgeFault> faults = new ArrayList<>();
    for (Entries.Entry entry : Entries.readFile(files, path)) {
      try {
        if (entry.name().equals("currency")) {
          currency = entry.required("text");
        } else {
          byItem.put(entry.name(), price(entry, currency, units.get(entry.name())));
        }
      } catch (KnowledgeFault e) {
        faults.add(e);
      }
    }
    if (!faults.isEmpty()) {
      throw KnowledgeFault.all(faults);
    }
    return new PriceBook(currency, byItem, invented);
  }

  /** The price that an entry tells; every item has the one unit it is bought in. */
  private static Price price(Entries.Entry entry, String currency, String unit)
      throws KnowledgeFault {
    List<String> wrong = new ArrayList<>();
    String pack = entry.field("pack");
    Matcher holds = PACK.matcher(pack);
    double size = holds.matches() ? Double.parseDouble(holds.group(1)) : 0;
    if (size <= 0) {
      wrong.add("the pack '" + pack + "' is no amount above 0, such as 20 or 2.98");
    } else if (holds.group(2).isEmpty()) {
      wrong.add("the pack '" + pack + "' has no unit");
    } else if (unit != null && !unit.equals(holds.group(2))) {
      wrong.add("the pack is in " + holds.group(2) + ", and this is bought in " + unit);
    }
    double price = Double.NaN;
    try {
      Quantity sum = Quantity.parse(entry.field("price"), Dimension.MONEY);
      price = sum.value();
      if (price < 0) {
        wrong.add("the price is below nothing");
      } else if (currency.isEmpty()) {
        wrong.add("currency: " + sum.unit() + " does not stand before it");
      } else if (!sum.unit().equals(currency)) {
        wrong.add("the price is in " + sum.unit() + ", and the book is in " + currency);
      }
    } catch (NotAQuantity e) {
      wrong.add("the price '" + entry.field("price") + "' is no sum of money");
    }
    if (!wrong.isEmpty()) {
      throw new KnowledgeFault(
          entry.file(),
          entry.line(),
          "the price of '"
              + entry.name()
              + "' cannot be used: "
              + String.join("; ", wrong)
              + "; write "
              + entry.name()
              + ": {pack: 20 "
              + (unit == null ? "kg" : unit)
              + ", price: 18.50 "
              + (currency.isEmpty() ? "GBP" : currency)
              + "}");
    }
    return new Price(size, holds.group(2), price);
  }

  /** Whether it is the demonstration one, whose prices are invented. */
  public boolean invented() {
    return invented;
  }

  /** The currency of every price. */
  public String currency() {
    return currency;
  }

  /** The price of an item; empty if the book has none. */
  public Optional<Price> find(String item) {
    return Optional.ofNullable(byItem.get(item));
  }
}
