package underfoot.knowledge;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import underfoot.scenario.FactBook;
import underfoot.scenario.FactDefinition;
import underfoot.scenario.RuleFiles;

/** All that the rules refer to by name, for one practice. It never changes once loaded. */
public final class Knowledge {
  private static final String GENERALITIES = "generalities.yaml";
  private static final String GENERAL_REASONS = "reasons of every such layer";

  private final FactBook facts;
  private final Figures figures;
  private final Wording wording;
  private final Layers layers;
  private final Materials materials;
  private final Steps steps;
  private final List<Changes.Change> changes;
  private final Survey survey;
  private final Boards boards;
  private final PriceBook prices;
  private final Map<String, List<String>> scales;
  private final Map<String, Source> sources;
  private final Map<String, Status> statuses;
  private final List<Disagreement> disagreements;
  private final Kinds kinds;
  private final Headlines headlines;
  private final Shopping shopping;
  private final SiteRows site;
  private final Set<String> generalities;
  private final Set<String> generalReasons;
  private final Acts acts;
  private final List<Promise> promises;
  private final Map<String, String> keys = new HashMap<>();

  private Knowledge(
      FactBook facts,
      Figures figures,
      Wording wording,
      Layers layers,
      Materials materials,
      Steps steps,
      List<Changes.Change> changes,
      Survey survey,
      Boards boards,
      PriceBook prices,
      Map<String, List<String>> scales,
      Map<String, Source> sources,
      Map<String, Status> statuses,
      List<Disagreement> disagreements,
      Kinds kinds,
      Headlines headlines,
      Shopping shopping,
      SiteRows site,
      Set<String> generalities,
      Set<String> generalReasons,
      Acts acts,
      List<Promise> promises) {
    this.facts = facts;
    this.figures = figures;
    this.wording = wording;
    this.layers = layers;
    this.materials = materials;
    this.steps = steps;
    this.changes = changes;
    this.survey = survey;
    this.boards = boards;
    this.prices = prices;
    this.scales = scales;
    this.sources = sources;
    this.statuses = statuses;
    this.disagreements = disagreements;
    this.kinds = kinds;
    this.headlines = headlines;
    this.shopping = shopping;
    this.site = site;
    this.generalities = Set.copyOf(generalities);
    this.generalReasons = Set.copyOf(generalReasons);
    this.acts = acts;
    this.promises = List.copyOf(promises);
    for (FactDefinition definition : facts.definitions()) {
      if (!definition.called().isEmpty()) {
        keys.put(definition.called(), definition.key());
      }
    }
  }

  /**
   * Loads the knowledge base.
   *
   * @param files where it is
   * @param facts the facts that scenarios may state, loaded from the same place
   * @param practice whose published guidance applies, such as {@code uk}
   * @throws KnowledgeFault if a file cannot be used as it stands
   */
  public static Knowledge load(RuleFiles files, FactBook facts, String practice)
      throws KnowledgeFault {
    Map<String, List<String>> scales = new LinkedHashMap<>();
    List<Entries.Entry> layerRows = Entries.readFolder(files, "layers");
    for (Entries.Entry entry : layerRows) {
      if (entry.lists().containsKey("list")) {
        scales.put(entry.name(), entry.lists().get("list"));
      }
    }
    Map<String, Source> sources = new LinkedHashMap<>();
    Map<String, Status> statuses = Status.load(files);
    for (Entries.Entry entry : Entries.readFile(files, "sources.yaml")) {
      if (!statuses.containsKey(entry.required("status"))) {
        throw new KnowledgeFault(
            entry.file(),
            entry.line(),
            "'%s' has the status '%s', which is none; write one of %s"
                .formatted(
                    entry.name(), entry.field("status"), String.join(", ", statuses.keySet())));
      }
      sources.put(
          entry.name(),
          new Source(
              entry.name(),
              entry.required("title"),
              entry.required("status"),
              entry.field("note"),
              entry.field("holds")));
    }
    Figures figures = Figures.load(files, practice);
    Layers layers = Layers.of(layerRows);
    Materials materials = Materials.load(files, layers, figures);
    Wording wording = Wording.load(files);
    List<Entries.Entry> general =
        files.list("", ".yaml").contains(GENERALITIES)
            ? Entries.readFile(files, GENERALITIES)
            : List.of();
    return new Knowledge(
        facts,
        figures,
        wording,
        layers,
        materials,
        Steps.load(files),
        Changes.load(files, facts),
        Survey.load(files, facts),
        Boards.load(files, layers, figures),
        PriceBook.shipped(files, materials),
        Map.copyOf(scales),
        sources,
        statuses,
        Disagreement.load(files),
        Kinds.load(files, figures, wording, layers, scales, sources.keySet()),
        Headlines.load(files, wording),
        Shopping.load(files, materials, layers, figures, wording),
        SiteRows.load(files, layers),
        generalities(general, wording),
        generalReasons(general),
        Acts.load(files, scales),
        Promise.load(files));
  }

  private static Set<String> generalities(List<Entries.Entry> told, Wording wording)
      throws KnowledgeFault {
    Set<String> all = new HashSet<>();
    for (Entries.Entry entry : told) {
      for (String id : isOfReasons(entry) ? List.<String>of() : entry.named("list")) {
        if (!wording.ids().contains(id)) {
          throw new KnowledgeFault(GENERALITIES, entry.line(), "'" + id + "' is no wording");
        }
        all.add(id);
      }
    }
    return all;
  }

  private static Set<String> generalReasons(List<Entries.Entry> told) {
    Set<String> all = new HashSet<>();
    told.stream().filter(Knowledge::isOfReasons).forEach(one -> all.addAll(one.named("list")));
    return all;
  }

  private static boolean isOfReasons(Entries.Entry entry) {
    return entry.name().equals(GENERAL_REASONS);
  }

  /** The rules whose reason for a layer holds wherever such a layer lies. */
  public Set<String> generalReasons() {
    return generalReasons;
  }

  /** The wordings of what holds on nearly every floor. */
  public Set<String> generalities() {
    return generalities;
  }

  /** The facts that scenarios may state. */
  public FactBook facts() {
    return facts;
  }

  /** What heads the answer, the gravest first. */
  public Headlines headlines() {
    return headlines;
  }

  /** What is asked for in shops. */
  public Shopping shopping() {
    return shopping;
  }

  /** What stands beside each layer on the sheet for the site. */
  public SiteRows site() {
    return site;
  }

  /** The numbers. */
  public Figures figures() {
    return figures;
  }

  /** The sentences. */
  public Wording wording() {
    return wording;
  }

  /** The kinds of layer. */
  public Layers layers() {
    return layers;
  }

  /** What there is to buy. */
  public Materials materials() {
    return materials;
  }

  /** What advice may ask a person to do. */
  public Acts acts() {
    return acts;
  }

  /** What every advice keeps. */
  public List<Promise> promises() {
    return promises;
  }

  /** The steps of the work. */
  public Steps steps() {
    return steps;
  }

  /** What may be changed when nothing fits, the least trouble first. */
  public List<Changes.Change> changes() {
    return changes;
  }

  /** The order in which a floor is looked into. */
  public Survey survey() {
    return survey;
  }

  /** The boards that are laid over a deck. */
  public Boards boards() {
    return boards;
  }

  /** The demonstration price book. */
  public PriceBook prices() {
    return prices;
  }

  /** The classes of material, each scale from the least to the strictest. */
  public Map<String, List<String>> scales() {
    return scales;
  }

  /** What there is to say of each kind of deck, covering, tile and so on. */
  public Kinds kinds() {
    return kinds;
  }

  /** The bibliography. */
  public Map<String, Source> sources() {
    return sources;
  }

  /**
   * What a rule or a figure cites: an entry of the bibliography, with the clause.
   *
   * @throws MissingKnowledge if there is no such entry
   */
  public Source source(String citation) {
    Source source = sources.get(Source.key(citation));
    if (source == null) {
      throw new MissingKnowledge("source", Source.key(citation));
    }
    return source.cited(citation);
  }

  /** Where sources differ. */
  public List<Disagreement> disagreements() {
    return disagreements;
  }

  /** How well things may be known, the best first. */
  public Map<String, Status> statuses() {
    return statuses;
  }

  /** The scenario key of a fact by the name rules use; the name itself if it is in no scenario. */
  public String keyOf(String name) {
    return keys.getOrDefault(name, name);
  }
}
