package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Headlines;
import underfoot.knowledge.Headlines.Row;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.Wording;
import underfoot.measure.Texts;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.FirstThings.DoNow;
import underfoot.scenario.Named;

/** Finds what heads the answer and what is done first, by the rows of {@code headlines.yaml}. */
final class FirstThingsMaker {
  private static final int MOST = 3;

  private final Headlines headlines;
  private final Phrases phrases;
  private final Set<String> limits;
  private final List<Thing> things = new ArrayList<>();

  /** Something that may head the answer. */
  private record Thing(String id, String kind, String title, int place, boolean gate) {
    /** What it is about; empty for the room. */
    String about() {
      return Named.of(id).about();
    }
  }

  /**
   * @param headlines the rows
   * @param phrases the phrase book
   * @param limits the wordings that tell of a limit the client set and that is not kept
   */
  FirstThingsMaker(Headlines headlines, Phrases phrases, Set<String> limits) {
    this.headlines = headlines;
    this.phrases = phrases;
    this.limits = limits;
  }

  /** The wording of a decision's id, which may name what it is about. */
  static String wording(String id) {
    return Named.of(id).name();
  }

  private void add(String id, String kind, String title, boolean gate) {
    things.add(new Thing(id, kind, title, headlines.place(wording(id), kind), gate));
  }

  FirstThings of(List<HaltNote> stops, List<RemedyNote> remedies, List<FindOut> open) {
    for (HaltNote one : stops) {
      add(one.id(), one.verdict() == Verdict.STOP ? "stop" : "outside guidance", one.title(), true);
    }
    for (RemedyNote one : remedies) {
      boolean limit = limits.contains(wording(one.id()));
      String kind = one.hold() ? "gate" : limit ? "settle" : "remedy";
      add(one.id(), kind, one.title(), one.hold());
    }
    things.sort(Comparator.comparingInt(Thing::place));
    int count = (int) things.stream().filter(one -> one.kind().equals("remedy")).count();
    String headline = "";
    String of = "";
    for (Thing one : things) {
      if (one.place() < headlines.rows().size()
          && !headlines.rows().get(one.place()).say().isEmpty()) {
        headline = filled(headlines.rows().get(one.place()).say(), one, count);
        of = one.id();
        break;
      }
    }
    if (things.isEmpty()) {
      headline =
          headlines.rows().stream().filter(this::always).map(Row::say).findFirst().orElse("");
    }
    open.stream().sorted(Comparator.comparingInt(FindOut::rank)).forEach(this::findOut);
    things.sort(Comparator.comparingInt(Thing::place));
    return first(headline, of);
  }

  private boolean always(Row row) {
    return row.on().isEmpty() && row.any().isEmpty();
  }

  private void findOut(FindOut one) {
    boolean dealtWith =
        things.stream()
            .filter(thing -> thing.place() < headlines.rows().size())
            .anyMatch(thing -> headlines.rows().get(thing.place()).facts().contains(one.fact()));
    if (!dealtWith && !one.look().isEmpty()) {
      add(
          one.fact(),
          "find out",
          phrases.say(
              "find-out-now", "question", one.question(), "look", Texts.capital(one.look())),
          false);
    }
  }

  private FirstThings first(String headline, String of) {
    Set<String> told = new LinkedHashSet<>();
    List<DoNow> now = new ArrayList<>();
    List<String> also = new ArrayList<>();
    for (Thing one : things) {
      Row row = one.place() < headlines.rows().size() ? headlines.rows().get(one.place()) : null;
      String words = row == null || row.now().isEmpty() ? one.title() : filled(row.now(), one, 0);
      if (!told.add(words)) {
        continue;
      }
      if (now.size() < MOST) {
        now.add(new DoNow(one.id(), one.kind(), sentence(words)));
      } else if (one.gate()) {
        also.add(Texts.lower(one.title()));
      }
    }
    return new FirstThings(headline, of, now, also);
  }

  private static String sentence(String words) {
    return Wording.isSentence(words) ? words : Texts.sentence(words);
  }

  private String filled(String words, Thing thing, int count) {
    String many =
        count == 1
            ? phrases.say("one-thing-is")
            : phrases.say("things-are", "count", Integer.toString(count));
    return words
        .replace("[it]", thing.about())
        .replace("[what]", Texts.lower(thing.title()))
        .replace("[count]", many);
  }
}
