package underfoot.report.html;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import underfoot.buildup.Severity;
import underfoot.knowledge.SiteRows;
import underfoot.knowledge.TextParts;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.Door;
import underfoot.plan.Advice.Layer;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.JoistCuts;
import underfoot.plan.Justification;
import underfoot.plan.RoomZone;
import underfoot.report.FloorTold;
import underfoot.report.HtmlWriter;
import underfoot.report.Sentences;

/**
 * The parts of the page about what is built: the section, its layers, what comes first, dangers,
 * doors.
 */
final class BuildUpParts extends HtmlParts {
  private int parts;
  private int found;

  BuildUpParts(HtmlParts page) {
    super(page);
  }

  void section() {
    Drawings.figure(new SectionDrawing(advice, speech).draw(), speech.say("section-caption"), out);
    trowels();
    double above = advice.heights().aboveOldFloor().mean();
    if (Math.abs(above - advice.heights().rise().mean()) > 1e-6) {
      say("p", "levels-from-base", "above", Texts.whole(above));
    }
  }

  void layers() {
    if (medium == HtmlReport.Medium.SCREEN) {
      out.element("p", speech.say("how-to-open"), "class", "faint screen-only");
    }
    out.open("ol", "class", "layers");
    advice.layers().forEach(this::layer);
    out.end("ol");
    asFound(advice);
    advice.zones().forEach(this::zone);
  }

  /** The notches that comb this floor, each once, with the layers it combs. */
  private void trowels() {
    Map<Double, StringJoiner> notches = new TreeMap<>();
    for (Layer layer : advice.layers()) {
      Double notch = layer.drawn().get(SiteRows.NOTCH);
      if (notch != null) {
        notches
            .computeIfAbsent(notch, mm -> new StringJoiner(", "))
            .add(layer.order() + " " + Texts.lower(layer.name()));
      }
    }
    if (notches.isEmpty()) {
      return;
    }
    out.open("div", "class", "trowels").line();
    notches.forEach(
        (notch, layers) -> {
          String id = "trowel-" + Math.round(notch);
          String caption =
              speech.say(
                  "trowel-caption",
                  "notch",
                  Texts.whole(notch),
                  "bar",
                  Texts.whole(TrowelDrawing.BAR),
                  "layers",
                  layers.toString());
          Drawings.figure(TrowelDrawing.draw(notch, id, speech), caption, out);
        });
    out.end("div");
  }

  /** The floor as it is today. */
  private void asFound(Advice of) {
    if (of.asFound().isEmpty()) {
      return;
    }
    out.element("h3", speech.say("heading-as-found"));
    String id = "found-" + ++found;
    Drawings.figure(FoundDrawing.draw(of, id, speech), speech.say("found-caption"), out);
  }

  /** A part of the room where the floor is otherwise. */
  private void zone(RoomZone zone) {
    out.element("h3", speech.say("heading-zone", "zone", Texts.capital(zone.name())));
    out.element("p", FloorTold.level(zone, speech));
    if (zone.advice().builds()) {
      Drawings.figure(
          new SectionDrawing(zone.advice(), speech, "section-" + ++parts).draw(),
          speech.say("section-caption"),
          out);
    }
    asFound(zone.advice());
  }

  private void layer(Layer layer) {
    out.open("li");
    out.open("details", "class", "layer more").open("summary");
    out.open("span", "class", "swatch " + MaterialStyle.of(layer.family()).styled()).close("span");
    out.element("strong", layer.order() + " " + layer.name());
    out.text(" ");
    out.element("span", Sentences.thickness(layer.thickness(), speech), "class", "thick");
    out.close("summary");
    if (!layer.material().isEmpty() && !layer.material().equalsIgnoreCase(layer.name())) {
      out.element("p", Texts.capital(layer.material()) + ".", "class", "material");
    }
    Set<String> given = new LinkedHashSet<>();
    for (Justification one : layer.reasons()) {
      if (given.add(one.rule().key())) {
        out.open("p");
        out.element("em", speech.say("layer-why", "reason", one.rule().reason()) + ".");
        out.close("p");
      }
    }
    chains.of(layer.reasons());
    if (layer.spec().size() + layer.fixing().size() > 0) {
      out.open("ul", "class", "spec");
      for (Advice.Say say : layer.spec()) {
        said(say.text(), say.because());
      }
      for (Advice.Say say : layer.fixing()) {
        said(speech.say("layer-fixing", "text", say.text()), say.because());
      }
      out.end("ul");
    }
    out.close("details").end("li");
  }

  private void said(String words, List<Justification> because) {
    out.open("li").own("p", words);
    chains.of(because);
    out.end("li");
  }

  void remedies() {
    List<JoistCuts> cuts = new ArrayList<>(advice.joistCuts());
    advice.zones().forEach(zone -> cuts.addAll(zone.advice().joistCuts()));
    if (!cuts.isEmpty()) {
      HtmlWriter drawn = new HtmlWriter();
      CutDrawing.all(cuts, speech).forEach(drawn::add);
      Drawings.figure(drawn, speech.say("cuts-caption"), out);
    }
    out.open("ol", "class", "first");
    for (RemedyNote remedy : advice.remedies()) {
      out.open("li");
      out.open("h3");
      if (remedy.hold()) {
        out.element("span", speech.say("hold-point"), "class", "tag hold").text(" ");
      }
      out.own(remedy.title()).close("h3");
      out.own("p", remedy.text());
      chains.of(remedy.because());
      out.end("li");
    }
    out.end("ol");
  }

  void cautions(Severity severity) {
    for (CautionNote caution : advice.cautions()) {
      if (caution.severity() != severity || caution.id().startsWith(CHECK)) {
        continue;
      }
      // Dangers stand open; of the rest the title is told first.
      boolean folded = severity != Severity.DANGER;
      out.open(
          folded ? "details" : "div", "class", "note " + severity.word() + (folded ? " more" : ""));
      if (folded) {
        out.open("summary");
      }
      out.own("h3", caution.title());
      if (folded) {
        out.close("summary");
      }
      TextParts parts = caution.parts();
      if (!parts.part(TextParts.DANGER).isEmpty()) {
        out.open("dl");
        part(parts, TextParts.DANGER);
        part(parts, TextParts.WHOM);
        part(parts, TextParts.INSTEAD);
        out.end("dl");
        if (!parts.part(TextParts.MORE).isEmpty()) {
          out.own("p", parts.part(TextParts.MORE));
        }
      } else {
        out.own("p", caution.text());
      }
      chains.of(caution.because());
      out.end(folded ? "details" : "div");
    }
  }

  private void part(TextParts parts, String name) {
    if (!parts.part(name).isEmpty()) {
      say("dt", "caution-" + name);
      out.own("dd", parts.part(name));
    }
  }

  void doors() {
    out.element("p", Sentences.rise(advice.heights(), advice.massKgPerM2(), speech));
    if (advice.heights().doors().isEmpty()) {
      return;
    }
    out.open("ul");
    for (Door door : advice.heights().doors()) {
      out.open("li").own(Sentences.doorAndStep(door, speech)).end("li");
    }
    out.end("ul");
  }
}
