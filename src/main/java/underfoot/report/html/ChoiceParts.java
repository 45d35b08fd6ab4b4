package underfoot.report.html;

import java.util.Locale;
import underfoot.measure.Texts;
import underfoot.plan.Advice.Alternative;
import underfoot.plan.Advice.Assumption;
import underfoot.plan.ChangeNote;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.FindOut;
import underfoot.report.BuildUpLine;
import underfoot.report.ChangesText;

/**
 * The parts of the page about what is not settled: assumptions, changes, what to find out, other
 * ways.
 */
final class ChoiceParts extends HtmlParts {
  ChoiceParts(HtmlParts page) {
    super(page);
  }

  void assumptions() {
    out.open("div", "class", "box-round");
    say("p", "assumptions-intro");
    out.open("ul");
    for (Assumption one : advice.assumptions()) {
      out.open("li");
      out.open("p");
      out.own(
          "strong",
          speech.say("assumed", "fact", Texts.capital(one.called()), "value", one.assumed()));
      if (!one.look().isEmpty()) {
        out.text(" " + speech.say("find-out") + " " + Texts.sentence(one.look()));
      }
      out.close("p");
      if (one.wouldChange().isEmpty()) {
        faint("nothing-hangs-on-it");
      } else {
        faint("would-change");
        out.open("ul");
        for (String change : one.wouldChange()) {
          out.own("li", Texts.capital(change));
        }
        out.close("ul");
      }
      chains.of(one.because());
      out.end("li");
    }
    out.close("ul").end("div");
  }

  void changes() {
    out.open("ul", "class", "ways");
    for (ChangeNote change : after.changes()) {
      out.open("li");
      out.own("p", speech.say("change-then", "change", change.text(), "way", change.way()));
      out.own("p", BuildUpLine.numbers(change.numbers(), speech), "class", "faint");
      out.end("li");
    }
    out.end("ul");
    faint("changes-proved");
    ChangesText.first(advice, speech).ifPresent(said -> out.own("p", said));
    after.changesNote().ifPresent(note -> out.own("p", note, "class", "faint"));
  }

  void findOut() {
    out.open("ol");
    for (FindOut one : advice.findOutFirst()) {
      out.open("li");
      out.open("p");
      out.own("strong", Texts.capital(one.called()));
      out.own(". " + (one.look().isEmpty() ? one.ask() : one.look()));
      out.close("p");
      out.open("ul");
      for (String decision : one.decisions()) {
        out.own("li", Texts.capital(decision));
      }
      out.close("ul");
      out.end("li");
    }
    out.end("ol");
  }

  void alternatives() {
    out.open("ul", "class", "ways");
    for (Alternative one : advice.alternatives()) {
      String standing = one.standing().name().toLowerCase(Locale.ROOT).replace('_', '-');
      out.open("li");
      say("h3", "standing-" + standing, "way", one.title());
      out.own("p", one.text());
      for (ComparedBuildUp way : after.ways()) {
        if (way.id().equals(one.id())) {
          out.own("p", BuildUpLine.numbers(way, speech), "class", "faint");
        }
      }
      chains.of(one.because());
      out.end("li");
    }
    out.end("ul");
  }
}
