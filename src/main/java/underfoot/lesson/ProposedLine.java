package underfoot.lesson;

import underfoot.measure.Texts;
import underfoot.plan.Advice.Layer;
import underfoot.reasoning.MaterialClasses;

/** A line of a proposal. It belongs to a layer, or to none (joints, edges). */
final class ProposedLine {
  final Layer layer;
  final String sort;
  String material;
  String grade = "";
  double thickness;
  String contact = "";
  String screw = "";
  String whole = "";

  ProposedLine(Layer layer, String sort) {
    this.layer = layer;
    this.sort = sort;
  }

  /** What it says. */
  String text(LessonSheet sheet) {
    if (!whole.isEmpty()) {
      return whole;
    }
    String text = material;
    if (!grade.isEmpty()) {
      text +=
          sheet.say(
              "lesson-line-class",
              "scale",
              MaterialClasses.scaleOf(sheet.knowledge(), grade),
              "class",
              grade);
    }
    if (thickness > 0) {
      text += sheet.say("lesson-line-thick", "thickness", thick(thickness));
    }
    if (!contact.isEmpty()) {
      text += sheet.say("lesson-line-contact", "percent", contact);
    }
    if (!screw.isEmpty()) {
      text += sheet.say("lesson-line-screw", "length", screw);
    }
    return text;
  }

  static String thick(double mm) {
    return Texts.of(Math.round(mm * 10) / 10.0, "mm");
  }
}
