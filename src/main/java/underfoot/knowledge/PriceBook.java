package underfoot.knowledge;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  private final String currency;
  private final Map<String, Price> byItem;

  private PriceBook(String currency, Map<String, Price> byItem) {
    this.currency = currency;
    this.byItem = byItem;
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
  public static PriceBook shipped(RuleFiles files) throws KnowledgeFault {
    return read(files, SHIPPED);
  }

  /**
   * A person's own price book.
   *
   * @param name its name, for messages
   * @param content what stands in it
   * @throws KnowledgeFault if it cannot be used; of a file that is no price book it quotes nothing
   */
  public static PriceBook own(String name, byte[] content) throws KnowledgeFault {
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
              + " item, such as primer: {pack: 5 l, price: 28 GBP}");
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
    return read(one, name);
  }

  private static PriceBook read(RuleFiles files, String path) throws KnowledgeFault {
    String currency = "";
    Map<String, Price> byItem = new LinkedHashMap<>();
    for (Entries.Entry entry : Entries.readFile(files, path)) {
      if (entry.name().equals("currency")) {
        currency = entry.required("text");
        continue;
      }
      try {
        Quantity.Count pack = Quantity.count(entry.required("pack"));
        Quantity price = Quantity.parse(entry.required("price"), Dimension.MONEY);
        if (!(pack.number() > 0) || !(price.value() >= 0) || !price.unit().equals(currency)) {
          throw new NumberFormatException();
        }
        byItem.put(entry.name(), new Price(pack.number(), pack.of(), price.value()));
      } catch (NumberFormatException | NotAQuantity e) {
        throw new KnowledgeFault(
            path,
            entry.line(),
            "the price of '"
                + entry.name()
                + "' cannot be read; write currency: GBP first, then "
                + entry.name()
                + ": {pack: 20 kg, price: 18.50 GBP}");
      }
    }
    return new PriceBook(currency, byItem);
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
