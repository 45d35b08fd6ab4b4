package underfoot.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Facts;
import underfoot.knowledge.From;
import underfoot.knowledge.TableRow;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.LastReading.Broken;
import underfoot.plan.LastReading.Read;

/** Reads whether wishes are answered, and what is known is acted on, as promises.yaml has it. */
final class WishesRead {
  private WishesRead() {}

  private static List<String> list(TableRow row, String name) {
    return row.says().getOrDefault(name, List.of());
  }

  private static Facts facts(Read read) {
    return read.assessment().factsOfChosen();
  }

  /** Whether a fact is held of the whole floor, written as name and value. */
  private static boolean held(Read read, String says) {
    return facts(read).all().stream()
        .anyMatch(one -> one.about().isEmpty() && one.says().equals(says));
  }

  /** The wordings told, each with what it is about. */
  private static Set<String> told(Read read) {
    Set<String> told = new LinkedHashSet<>();
    Advice advice = read.advice();
    advice.stopFindings().stream().map(HaltNote::id).forEach(told::add);
    advice.remedies().stream().map(RemedyNote::id).forEach(told::add);
    advice.cautions().stream().map(CautionNote::id).forEach(told::add);
    return told;
  }

  static Optional<Broken> wishes(Read read) {
    if (!read.advice().builds()) {
      return Optional.empty();
    }
    Set<String> told = told(read);
    for (TableRow wish : read.promise().rows()) {
      if (list(wish, "while").stream().allMatch(says -> held(read, says))) {
        for (String about : missed(read, wish)) {
          boolean said =
              list(wish, "said").stream()
                  .anyMatch(wording -> told.contains(Sayings.id(wording, about)));
          if (!said) {
            return LastReading.broken(
                read,
                "there is the wish for "
                    + wish.text("wish", "")
                    + (about.isEmpty() ? "" : " at " + about),
                "it is neither met nor said not to be");
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The things for which a wish is not met; the empty name is the whole floor. */
  private static List<String> missed(Read read, TableRow wish) {
    List<String> laid = list(wish, "laid");
    if (read.advice().layers().stream()
        .anyMatch(layer -> laid.contains(layer.family()) || laid.contains(layer.id()))) {
      return List.of();
    }
    String missed = wish.text("missed", "");
    String fact = wish.text("fact", "");
    if (missed.isEmpty() && fact.isEmpty()) {
      return List.of("");
    }
    double most =
        fact.isEmpty() ? 0 : read.knowledge().figures().get(wish.text("figure", "")).number();
    List<String> things = new ArrayList<>();
    for (Fact one : facts(read).all()) {
      if (one.name().equals(fact.isEmpty() ? missed : fact) && one.number() > most) {
        things.add(one.about());
      }
    }
    return things;
  }

  static Optional<Broken> conditions(Read read) {
    Set<String> told = told(read);
    for (int i = 0; i < read.advice().zones().size(); i++) {
      Read part =
          new Read(
              read.advice().zones().get(i).advice(),
              read.assessment().zones().get(i).assessment(),
              read.promise());
      Optional<Broken> there = conditions(part);
      if (there.isPresent()) {
        return there;
      }
      told.removeAll(told(part)); // what is not known there may be known of the room
    }
    for (TableRow row : read.promise().rows()) {
      String known = row.text("known", "");
      String held = row.text("held", "");
      for (String id : told) {
        String text = row.text("text", "");
        String about = id.startsWith(text + " @") ? id.substring(text.length() + 2) : "";
        if (!id.equals(Sayings.id(text, about))) {
          continue;
        }
        Fact said = facts(read).find(known, about);
        boolean isKnown = said != null && said.from() == From.SCENARIO;
        if (isKnown || (!held.isEmpty() && held(read, held))) {
          return LastReading.broken(
              read,
              "'" + id + "' is told",
              known.isEmpty() ? held + " is held" : "the " + known + " is known");
        }
      }
    }
    return Optional.empty();
  }

  static Optional<Broken> met(Read read) {
    for (TableRow row : read.promise().rows()) {
      boolean asked =
          read.advice().remedies().stream().anyMatch(one -> one.id().equals(row.text("text", "")));
      boolean other =
          read.advice().remedies().stream().anyMatch(one -> one.id().equals(row.text("else", "")));
      double leads = facts(read).number(row.text("fact", ""));
      double wanted = read.knowledge().figures().get(row.text("figure", "")).number();
      if (asked && !other && leads > wanted) {
        return LastReading.broken(
            read,
            "'" + row.text("text", "") + "' asks for " + wanted + " at most",
            "the conditions given lead to " + leads);
      }
    }
    return Optional.empty();
  }
}
