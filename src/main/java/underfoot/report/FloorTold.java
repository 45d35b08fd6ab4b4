package underfoot.report;

import java.util.ArrayList;
import java.util.List;
import underfoot.buildup.LayerThickness;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.plan.Advice;
import underfoot.plan.Advice.Layer;
import underfoot.plan.LayerFound;
import underfoot.plan.RoomZone;
import underfoot.report.TextPage.Tone;

/** The floor as it is today and the parts of a room where it is otherwise, in sentences. */
public final class FloorTold {
  private FloorTold() {}

  /** The layers of the floor as it is today, the uppermost first, each with what becomes of it. */
  public static List<String> asFound(Advice advice, Phrases phrases) {
    List<String> told = new ArrayList<>();
    for (LayerFound layer : advice.asFound()) {
      String thick =
          Double.isNaN(layer.thicknessMm())
              ? phrases.say("found-unmeasured")
              : Texts.mm(layer.thicknessMm());
      told.add(
          0,
          phrases.say(
              layer.stays() ? "found-stays" : "found-comes-up",
              "name",
              Texts.capital(layer.name()),
              "thickness",
              thick));
    }
    return told;
  }

  /** Where a part ends against the rest of the floor. */
  public static String level(RoomZone zone, Phrases phrases) {
    String area = Texts.of(Math.round(zone.areaM2() * 100) / 100.0, "m2");
    if (Double.isNaN(zone.levelMm())) {
      return phrases.say("zone-not-built", "area", area);
    }
    String level = Texts.of(Math.round(zone.levelMm()), "mm");
    double step = Math.round(zone.stepMm());
    return step == 0
        ? phrases.say("zone-level", "area", area, "level", level)
        : phrases.say(
            step > 0 ? "zone-step-up" : "zone-step-down",
            "area",
            area,
            "level",
            level,
            "step",
            Texts.of(Math.abs(step), "mm"));
  }

  /** A layer with its thickness, in a few words. */
  public static String layer(Layer layer, Phrases phrases) {
    LayerThickness thickness = layer.thickness();
    return thickness.max() == 0
        ? layer.name()
        : phrases.say(
            "layer-in-short",
            "name",
            layer.name(),
            "thickness",
            Sentences.thickness(thickness, phrases));
  }

  /** Writes both, where there is anything to tell. */
  static void write(Advice advice, Phrases phrases, TextPage page) {
    if (!advice.asFound().isEmpty()) {
      page.heading(phrases.say("heading-as-found"));
      asFound(advice, phrases).forEach(one -> page.para(" - ", "   ", one, Tone.PLAIN));
    }
    for (RoomZone zone : advice.zones()) {
      page.heading(phrases.say("heading-zone", "zone", Texts.capital(zone.name())));
      page.para(level(zone, phrases));
      for (Layer layer : zone.advice().layers()) {
        page.para(TextPage.numbered(layer.order()), "   ", layer(layer, phrases), Tone.PLAIN);
      }
      for (String one : asFound(zone.advice(), phrases)) {
        page.para(" - ", "   ", phrases.say("zone-today", "layer", one), Tone.FAINT);
      }
    }
  }
}
