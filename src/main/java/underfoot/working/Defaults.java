package underfoot.working;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The limits and material values the workings use when they are run by name, read from the figures
 * file {@code rules/figures/workings-defaults.yaml} on the class path.
 */
public final class Defaults {
  /** Where the figures lie on the class path. */
  public static final String FILE = "/rules/figures/workings-defaults.yaml";

  private record Figure(String value, String status) {}

  private final Map<String, Figure> figures;

  private Defaults(Map<String, Figure> figures) {
    this.figures = figures;
  }

  /**
   * Reads the figures.
   *
   * @throws IllegalStateException where the file is missing or not in order; it names the figure
   */
  public static Defaults read() {
    try (InputStream stream = Defaults.class.getResourceAsStream(FILE)) {
      if (stream == null) {
        throw new IllegalStateException("figures not found: " + FILE);
      }
      return read(stream);
    } catch (IOException unreadable) {
      throw new IllegalStateException("figures not readable: " + FILE, unreadable);
    }
  }

  static Defaults read(InputStream stream) {
    YAMLMapper mapper =
        new YAMLMapper(
            YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build());
    JsonNode root;
    try {
      root = mapper.readTree(stream);
    } catch (JacksonException broken) {
      throw new IllegalStateException(FILE + ": " + broken.getOriginalMessage(), broken);
    }
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : root.properties()) {
      String name = entry.getKey();
      figures.put(
          name,
          new Figure(
              text(name, entry.getValue(), "value"), text(name, entry.getValue(), "status")));
    }
    return new Defaults(figures);
  }

  private static String text(String name, JsonNode figure, String field) {
    JsonNode value = figure.get(field);
    if (value == null || !value.isString() || value.asString().isBlank()) {
      throw new IllegalStateException(FILE + ": " + name + " has no text for " + field);
    }
    return value.asString();
  }

  private Figure figure(String name) {
    Figure figure = figures.get(name);
    if (figure == null) {
      throw new IllegalStateException(FILE + ": " + name + " is missing");
    }
    return figure;
  }

  private double value(String name, Dimension dimension) {
    try {
      return dimension.read(figure(name).value(), Optional.empty());
    } catch (Refused refused) {
      throw new IllegalStateException(FILE + ": " + name + " " + refused.getMessage(), refused);
    }
  }

  /** The strength classes of timber, in the order of the file. */
  public List<TimberGrade> grades() {
    List<TimberGrade> grades = new ArrayList<>();
    for (String name : figures.keySet()) {
      if (name.startsWith("timber-") && name.endsWith("-modulus") && !name.contains("-shear-")) {
        String stem = name.substring(0, name.length() - "modulus".length());
        grades.add(
            new TimberGrade(
                stem.substring("timber-".length(), stem.length() - 1)
                    .toUpperCase(java.util.Locale.ROOT),
                value(name, Dimension.STRESS),
                value(stem + "shear-modulus", Dimension.STRESS),
                value(stem + "bending-strength", Dimension.STRESS),
                value(stem + "shear-strength", Dimension.STRESS),
                value(stem + "mean-density", Dimension.DENSITY),
                figure(name).status()));
      }
    }
    return List.copyOf(grades);
  }

  /** Stocked screw lengths, mm. */
  public List<Double> stockedScrewsMm() {
    return figures.keySet().stream()
        .filter(name -> name.startsWith("stocked-screw-"))
        .map(name -> value(name, Dimension.LENGTH))
        .sorted()
        .toList();
  }

  /** How fast a cement screed dries. */
  public DryingRates cementDrying() {
    return drying("cement-screed");
  }

  /** How fast a calcium sulfate screed dries. */
  public DryingRates calciumSulfateDrying() {
    return drying("calcium-sulfate-screed");
  }

  private DryingRates drying(String screed) {
    return new DryingRates(
        value(screed + "-drying-first-depth", Dimension.LENGTH),
        value(screed + "-drying-rate-first", Dimension.DAYS_PER_DEPTH),
        value(screed + "-drying-rate-beyond", Dimension.DAYS_PER_DEPTH));
  }

  /** How large a bay of a heated floor may be. */
  public BayLimits heatedBays() {
    return new BayLimits(
        value("bay-heated-longest-side", Dimension.LENGTH) / 1000,
        OptionalDouble.of(value("bay-heated-largest-area", Dimension.AREA)));
  }

  /** How large a bay of an internal floor without heating may be. */
  public BayLimits unheatedBays() {
    return new BayLimits(
        value("bay-unheated-longest-side", Dimension.LENGTH) / 1000, OptionalDouble.empty());
  }

  /** The rates of evaporation at which the risk steps up. */
  public EvaporationBands evaporationBands() {
    return new EvaporationBands(
        value("evaporation-band-1-from", Dimension.EVAPORATION),
        value("evaporation-band-2-from", Dimension.EVAPORATION),
        value("evaporation-band-3-from", Dimension.EVAPORATION));
  }

  /** The first days a screed may be warmed. */
  public HeatingStart heatingStart() {
    return new HeatingStart(
        value("cement-screed-first-heating", Dimension.DAYS),
        value("calcium-sulfate-screed-first-heating", Dimension.DAYS));
  }

  /** Length of a straightedge where none is given, mm. */
  public double straightedgeMm() {
    return value("straightedge-usual-length", Dimension.LENGTH);
  }

  /** Frequency above which the simple vibration check may be used, Hz. */
  public double simpleVibrationCheckAboveHz() {
    return value("floor-frequency-simple-check", Dimension.FREQUENCY);
  }

  /** Most an occupied floor's surface may be above the room, K. */
  public double occupiedFloorExcessK() {
    return value("heated-floor-excess-occupied", Dimension.TEMPERATURE_STEP);
  }

  /** Temperature below which cement may stop hardening, C. */
  public double leastCuringC() {
    return value("cement-least-curing-temperature", Dimension.TEMPERATURE);
  }

  /** The falls a wet floor is laid to. */
  public FallLimits falls() {
    return new FallLimits(
        value("fall-gentlest", Dimension.GRADIENT), value("fall-steepest", Dimension.GRADIENT));
  }
}
