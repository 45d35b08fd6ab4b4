package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import underfoot.buildup.Caution;
import underfoot.buildup.Severity;
import underfoot.knowledge.Wording;
import underfoot.plan.Advice.CautionNote;
import underfoot.reasoning.Assessment;

/**
 * What can hurt people in the work, which the acts it asks for bring, each told once and whole, the
 * gravest first.
 */
public final class DangersTold {
  private DangersTold() {}

  /** What can hurt people in the work that is asked for on a floor. */
  public static List<CautionNote> of(Assessment assessment) {
    return of(Sayings.of(assessment), assessment.of(Caution.class));
  }

  static List<CautionNote> of(Sayings sayings, List<Caution> cautions) {
    List<Caution> all = new ArrayList<>(cautions);
    all.removeIf(one -> one.severity() != Severity.DANGER);
    List<CautionNote> notes = new ArrayList<>();
    for (Sayings.Same<Caution> same : sayings.once(all, Caution::wording, Caution::about)) {
      notes.add(note(sayings, same, Severity.DANGER, false));
    }
    notes.sort(
        Comparator.comparingInt(
            note ->
                sayings
                    .knowledge()
                    .headlines()
                    .place(FirstThingsMaker.wording(note.id()), "danger")));
    return notes;
  }

  /** What several rules warn of, told once. */
  static CautionNote note(
      Sayings sayings, Sayings.Same<Caution> same, Severity severity, boolean general) {
    Wording.Filled filled = sayings.fill(same.wording(), same.about());
    return new CautionNote(
        same.id(),
        severity,
        filled.title(same.about()),
        filled.parts(),
        same.about(),
        general,
        sayings.because(same, filled));
  }
}
