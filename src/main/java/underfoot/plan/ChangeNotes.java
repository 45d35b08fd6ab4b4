package underfoot.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.measure.Texts;
import underfoot.reasoning.ActsApplied;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.LeastChange;
import underfoot.reasoning.LeastChange.Altered;
import underfoot.reasoning.LeastChange.Proposal;
import underfoot.scenario.Place;

/** Puts the changes that would make a way stand into words and numbers. */
public final class ChangeNotes {
  private ChangeNotes() {}

  /**
   * What follows from a floor, with what would have to change of it.
   *
   * @param consequences what follows from it
   * @param knowledge the wordings
   * @param found what was found
   * @param planner works out what could be built then
   */
  public static Consequences add(
      Consequences consequences, Knowledge knowledge, LeastChange.Found found, Planner planner) {
    String note = new Phrases(knowledge.wording()).say("changes-not-all");
    return consequences.with(
        of(found.proposals(), planner), found.every() ? Optional.empty() : Optional.of(note));
  }

  /** The notes, in the order of the proposals. */
  private static List<ChangeNote> of(List<Proposal> proposals, Planner planner) {
    List<ChangeNote> notes = new ArrayList<>();
    for (Proposal proposal : proposals) {
      Assessment then = proposal.then();
      Phrases phrases = new Phrases(then.knowledge().wording());
      List<String> with = new ArrayList<>();
      for (Altered one : proposal.altered()) {
        with.add(Place.named(one.change().fact().key(), one.about()) + "=" + one.is());
      }
      Justifier justifier = new Justifier(then.scenario(), then.knowledge());
      ComparedBuildUp way = BuildUpComparison.of(then, then.buildUps().get(0), planner, justifier);
      Sayings sayings = Sayings.of(then);
      List<String> still =
          ActsApplied.structural(then).stream()
              .map(one -> sayings.title(one.wording(), one.about()))
              .distinct()
              .toList();
      String text = text(proposal, phrases);
      if (!still.isEmpty()) {
        String first = String.join("; ", still.stream().map(Texts::lower).toList());
        text = phrases.say("change-leaves", "change", text, "first", first);
      }
      notes.add(new ChangeNote(text, with, way.title(), then.verdict(), still, way));
    }
    return notes;
  }

  /** The ways in which a change may be made that ask for nothing forbidden, in words. */
  private static String ways(Proposal proposal, Altered one, Phrases phrases) {
    String said = "";
    for (String way : ActsApplied.ways(proposal.then(), one.change(), one.about())) {
      String words = one.change().ways().isEmpty() ? "" : phrases.say(way);
      said = said.isEmpty() ? words : phrases.say("or-else", "one", said, "other", words);
    }
    return said;
  }

  /** What a proposal asks for, as a sentence without its full stop. */
  static String text(Proposal proposal, Phrases phrases) {
    List<String> asked = new ArrayList<>();
    for (Altered one : proposal.altered()) {
      asked.add(
          phrases.say(
              one.change().wording(),
              "by",
              one.by(),
              "was",
              one.was(),
              "is",
              one.is(),
              "it",
              one.about(),
              "ways",
              ways(proposal, one, phrases)));
    }
    String text =
        asked.size() == 1
            ? asked.get(0)
            : phrases.say("two-changes", "one", asked.get(0), "other", asked.get(1));
    return Texts.capital(text);
  }
}
