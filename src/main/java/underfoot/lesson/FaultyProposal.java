package underfoot.lesson;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import underfoot.buildup.LayerClass;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.Figure;
import underfoot.knowledge.LessonBook;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Justification;
import underfoot.reasoning.BuildUp;
import underfoot.reasoning.MaterialClasses;

/** The recommended build-up, given a few known faults: which are they? */
final class FaultyProposal {
  private static final int FAULTS = 3;
  private static final double PER_CENT = 100;

  private final LessonSheet sheet;
  private final Advice advice;
  private final Facts facts;
  private final List<ProposedLine> lines = new ArrayList<>();
  private final List<Made> made = new ArrayList<>();
  private final Set<ProposedLine> touched = new HashSet<>();

  /** A fault that was made: the lines of which any will do, and what to say of it. */
  private record Made(
      List<ProposedLine> lines, List<Justification> because, Supplier<String> says) {}

  private FaultyProposal(LessonSheet sheet) {
    this.sheet = sheet;
    this.advice = sheet.advice();
    this.facts = sheet.assessment().factsOfChosen();
  }

  static Optional<Question> of(LessonSheet sheet) {
    return sheet.advice().builds() ? new FaultyProposal(sheet).make() : Optional.empty();
  }

  private Optional<Question> make() {
    propose();
    // One fault of the order of layers, the others of what a line says.
    List<LessonBook.Item> known = sheet.drawn(sheet.book().faults(), Integer.MAX_VALUE);
    Set<String> order = Set.of("order", "missing");
    List<LessonBook.Item> ofOrder =
        known.stream().filter(one -> order.contains(one.field("kind"))).toList();
    for (LessonBook.Item fault : ofOrder) {
      if (made.isEmpty()) {
        give(fault);
      }
    }
    Set<String> kinds = new HashSet<>();
    for (LessonBook.Item fault : known) {
      boolean other = !ofOrder.contains(fault) && !kinds.contains(fault.field("kind"));
      if (other && made.size() < FAULTS && give(fault)) {
        kinds.add(fault.field("kind"));
      }
    }
    if (made.size() < 2) {
      return Optional.empty();
    }
    made.sort(
        Comparator.comparingInt(
            one -> one.lines().stream().mapToInt(lines::indexOf).min().orElse(0)));
    return Optional.of(question());
  }

  private Question question() {
    LessonBook.Item kind = sheet.book().question("faults");
    List<Question.Option> options =
        lines.stream().map(l -> new Question.Option(number(l), l.text(sheet))).toList();
    List<Set<String>> right = new ArrayList<>();
    List<String> answers = new ArrayList<>();
    List<Question.Cite> cites = new ArrayList<>();
    Set<Figure> figures = new LinkedHashSet<>();
    for (Made one : made) {
      Set<String> any = new LinkedHashSet<>();
      one.lines().forEach(line -> any.add(number(line)));
      right.add(any);
      List<Question.Cite> own = LessonSheet.cites(one.because());
      cites.addAll(own.subList(0, Math.min(2, own.size())));
      figures.addAll(LessonSheet.figures(one.because()));
      answers.add(one.says().get() + (own.isEmpty() ? "" : " ‹" + own.get(0).rule() + "›"));
    }
    String ask = LessonSheet.fill(kind.field("ask"), "count", Integer.toString(made.size()));
    return sheet
        .draft(kind)
        .ask(ask)
        .lines(options, right)
        .answer(String.join("; ", answers))
        .cites(List.copyOf(new LinkedHashSet<>(cites)))
        .figures(List.copyOf(figures).subList(0, Math.min(3, figures.size())))
        .made();
  }

  private String number(ProposedLine line) {
    return Integer.toString(lines.indexOf(line) + 1);
  }

  // --- the sound proposal

  private void propose() {
    for (Layer layer : advice.layers()) {
      ProposedLine line = new ProposedLine(layer, "layer");
      line.material = sheet.say("lesson-line", "name", layer.name(), "material", layer.material());
      line.thickness = layer.thickness().mean();
      grade(layer).ifPresent(grade -> line.grade = grade);
      layer.coveragePercent().ifPresent(percent -> line.contact = Texts.of(percent, "%"));
      Fact screw = facts.find("board screw");
      if (screw != null && layer.family().equals("board")) {
        line.screw = screw.text();
      }
      lines.add(line);
    }
    Fact joint = facts.find("least joint");
    if (joint != null) {
      ProposedLine line = new ProposedLine(null, "joint");
      line.whole = sheet.say("lesson-line-joint", "joint", joint.text());
      lines.add(line);
    }
    if (!cautioned("movement-perimeter").isEmpty()) {
      ProposedLine line = new ProposedLine(null, "edge");
      line.whole = sheet.say("lesson-line-edge");
      lines.add(line);
    }
  }

  private Optional<String> grade(Layer layer) {
    List<String> grades = new ArrayList<>();
    for (var asked : sheet.assessment().of(LayerClass.class)) {
      if (asked.layer().equals(layer.id())) {
        grades.add(asked.grade());
      }
    }
    return grades.isEmpty()
        ? Optional.empty()
        : Optional.of(MaterialClasses.strictest(sheet.knowledge(), grades).get(0));
  }

  private List<Justification> cautioned(String id) {
    return advice.cautions().stream()
        .filter(caution -> caution.id().equals(id))
        .findFirst()
        .map(Advice.CautionNote::because)
        .orElse(List.of());
  }

  // --- faults

  private boolean give(LessonBook.Item fault) {
    return switch (fault.field("kind")) {
      case "material" -> material(fault);
      case "class" -> weaker();
      case "order" -> order();
      case "missing" -> missing(fault);
      case "thickness" -> thinner(fault);
      case "screw" -> longer();
      case "contact" -> contact(fault);
      case "joint" -> joint(fault);
      case "edge" -> edge(fault);
      default -> throw new IllegalStateException("no such fault: " + fault.field("kind"));
    };
  }

  private List<ProposedLine> untouched(String layer) {
    return lines.stream()
        .filter(line -> line.layer != null && !touched.contains(line))
        .filter(line -> layer.isEmpty() || line.layer.id().equals(layer))
        .toList();
  }

  private boolean made(List<ProposedLine> at, List<Justification> because, Supplier<String> says) {
    made.add(new Made(at, because, says));
    touched.addAll(at);
    return true;
  }

  private boolean material(LessonBook.Item fault) {
    List<ProposedLine> fit = untouched(fault.field("layer"));
    List<Justification> because = new ArrayList<>();
    if (fit.isEmpty()) {
      return false;
    }
    ProposedLine line = fit.get(0);
    if (!fault.field("warned").isEmpty()) {
      because.addAll(cautioned(fault.field("warned")));
      if (because.isEmpty()) {
        return false;
      }
    }
    if (!fault.field("ruled out").isEmpty()) {
      for (BuildUp one : sheet.assessment().buildUps()) {
        if (one.way().equals(fault.field("ruled out")) && !one.stands()) {
          advice.alternatives().stream()
              .filter(other -> other.id().equals(one.way()))
              .forEach(other -> because.addAll(other.because()));
        }
      }
      if (because.isEmpty()) {
        return false; // the other way stands here too, so it is no fault
      }
    }
    because.addAll(line.layer.reasons());
    String right = line.material;
    line.material = fault.field("says");
    line.grade = "";
    return told(line, because, "material", right);
  }

  /** Why a layer is told to be so. */
  private static List<Justification> saying(Layer layer, String words) {
    List<Justification> because = new ArrayList<>();
    layer.spec().stream()
        .filter(say -> say.text().contains(words))
        .forEach(say -> because.addAll(say.because()));
    return because;
  }

  /** Makes a fault of one line. */
  private boolean told(ProposedLine line, List<Justification> because, String how, String right) {
    return made(
        List.of(line),
        because,
        () -> sheet.say("lesson-fault-" + how, "line", number(line), "right", right));
  }

  private boolean weaker() {
    for (ProposedLine line : sheet.drawn(untouched(""), Integer.MAX_VALUE)) {
      List<String> scale =
          sheet
              .knowledge()
              .scales()
              .getOrDefault(MaterialClasses.scaleOf(sheet.knowledge(), line.grade), List.of());
      int place = scale.indexOf(line.grade);
      if (place > 0) {
        String right = line.grade;
        line.grade = scale.get(place - 1);
        return told(line, saying(line.layer, right), "class", right);
      }
    }
    return false;
  }

  private boolean order() {
    List<ProposedLine> fit = new ArrayList<>();
    for (int i = 0; i + 1 < lines.size(); i++) {
      boolean layers = lines.get(i).layer != null && lines.get(i + 1).layer != null;
      boolean alike = layers && lines.get(i).layer.family().equals(lines.get(i + 1).layer.family());
      if (layers && !alike && lines.get(i + 1).layer.order() < advice.layers().size()) {
        fit.add(lines.get(i));
      }
    }
    if (fit.isEmpty()) {
      return false;
    }
    ProposedLine lower = sheet.drawn(fit, 1).get(0);
    int at = lines.indexOf(lower);
    ProposedLine upper = lines.get(at + 1);
    Collections.swap(lines, at, at + 1);
    return made(
        List.of(upper, lower),
        Stream.concat(lower.layer.reasons().stream(), upper.layer.reasons().stream()).toList(),
        () ->
            sheet.say(
                "lesson-fault-order",
                "line",
                number(upper),
                "other",
                number(lower),
                "lower",
                Texts.lower(lower.layer.name()),
                "upper",
                Texts.lower(upper.layer.name())));
  }

  private boolean missing(LessonBook.Item fault) {
    List<ProposedLine> fit =
        untouched("").stream()
            .filter(line -> fault.list("layers").contains(line.layer.id()))
            .toList();
    if (fit.isEmpty()) {
      return false;
    }
    ProposedLine gone = sheet.drawn(fit, 1).get(0);
    ProposedLine above = lines.get(lines.indexOf(gone) + 1);
    lines.remove(gone);
    touched.add(gone);
    return made(
        List.of(above),
        gone.layer.reasons(),
        () ->
            sheet.say(
                "lesson-fault-missing",
                "line",
                number(above),
                "right",
                Texts.lower(gone.layer.name())));
  }

  private boolean thinner(LessonBook.Item fault) {
    for (ProposedLine line : untouched("")) {
      if (fault.list("layers").contains(line.layer.id()) && line.thickness > 0) {
        String share = fault.field("share");
        String right = ProposedLine.thick(line.thickness);
        line.thickness =
            Math.floor(
                line.thickness * Double.parseDouble(share.replace("%", "").strip()) / PER_CENT);
        return told(line, line.layer.reasons(), "thickness", right);
      }
    }
    return false;
  }

  private boolean longer() {
    Fact longest = facts.find("screw longest");
    for (ProposedLine line : untouched("")) {
      if (longest != null && !line.screw.isEmpty()) {
        Optional<Figure> next =
            sheet.knowledge().figures().startingWith("stocked-screw-").stream()
                .filter(one -> one.number() > longest.number())
                .min(Comparator.comparingDouble(Figure::number));
        if (next.isPresent()) {
          String right = line.screw;
          line.screw = next.get().text();
          return made(
              List.of(line),
              sheet.citing("board screw"),
              () ->
                  sheet.say(
                      "lesson-fault-screw",
                      "line",
                      number(line),
                      "right",
                      right,
                      "longest",
                      longest.text()));
        }
      }
    }
    return false;
  }

  private boolean contact(LessonBook.Item fault) {
    for (ProposedLine line : sheet.drawn(untouched(""), Integer.MAX_VALUE)) {
      String says = fault.field("says");
      boolean less =
          !line.contact.isEmpty()
              && Double.parseDouble(says.replace("%", "").strip())
                  < line.layer.coveragePercent().orElse(0.0);
      if (less) {
        String right = line.contact;
        line.contact = says;
        List<Justification> because = saying(line.layer, right);
        if (because.isEmpty()) {
          advice.coverage().ifPresent(target -> because.addAll(target.because()));
        }
        return told(line, because, "contact", right);
      }
    }
    return false;
  }

  private boolean joint(LessonBook.Item fault) {
    Fact least = facts.find("least joint");
    for (ProposedLine line : lines) {
      String says = fault.field("says");
      if (line.sort.equals("joint")
          && !touched.contains(line)
          && Double.parseDouble(says.split(" ")[0]) < least.number()) {
        line.whole = sheet.say("lesson-line-joint", "joint", says);
        return told(line, sheet.citing("least joint"), "joint", least.text());
      }
    }
    return false;
  }

  private boolean edge(LessonBook.Item fault) {
    for (ProposedLine line : lines) {
      if (line.sort.equals("edge") && !touched.contains(line)) {
        line.whole = sheet.say("lesson-line-no-edge");
        return made(
            List.of(line),
            cautioned(fault.field("warned")),
            () -> sheet.say("lesson-fault-edge", "line", number(line)));
      }
    }
    return false;
  }
}
