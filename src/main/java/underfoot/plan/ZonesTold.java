package underfoot.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.Advice.HaltNote;
import underfoot.plan.Advice.RemedyNote;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.ZonePart;

/**
 * What is told of the parts of a room besides the room itself: what has to be put right or can hurt
 * there stands among what is told of the room, under the name of the part, unless it is told of the
 * room already.
 */
final class ZonesTold {
  private ZonesTold() {}

  /** The advice on each part of a room. */
  static List<RoomZone> of(Assessment room) {
    List<RoomZone> zones = new ArrayList<>();
    for (ZonePart part : room.zones()) {
      Assessment there = part.assessment();
      zones.add(
          new RoomZone(
              part.name(),
              there.facts().number("area"),
              part.surface(),
              part.level(),
              part.step(),
              AdviceMaker.ofPart(there, room)));
    }
    return zones;
  }

  static List<HaltNote> halts(List<HaltNote> room, List<RoomZone> zones) {
    List<HaltNote> all =
        with(room, zones, zone -> zone.advice().stopFindings(), HaltNote::id, ZonesTold::at);
    all.sort(Comparator.comparing(HaltNote::verdict).reversed());
    return all;
  }

  static List<RemedyNote> remedies(List<RemedyNote> room, List<RoomZone> zones) {
    return with(room, zones, zone -> zone.advice().remedies(), RemedyNote::id, ZonesTold::at);
  }

  static List<CautionNote> cautions(List<CautionNote> room, List<RoomZone> zones) {
    List<CautionNote> all =
        with(room, zones, zone -> zone.advice().cautions(), CautionNote::id, ZonesTold::at);
    all.sort(Comparator.comparing(CautionNote::severity));
    return all;
  }

  /** Something told of a zone, as it stands among what is told of the room. */
  private interface Placed<T> {
    T at(T note, String zone);
  }

  private static <T> List<T> with(
      List<T> room,
      List<RoomZone> zones,
      Function<RoomZone, List<T>> told,
      Function<T, String> id,
      Placed<T> placed) {
    List<T> all = new ArrayList<>(room);
    Set<String> ids = new HashSet<>();
    room.forEach(one -> ids.add(id.apply(one)));
    for (RoomZone zone : zones) {
      for (T one : told.apply(zone)) {
        if (ids.add(id.apply(one))) {
          all.add(placed.at(one, zone.name()));
        }
      }
    }
    return all;
  }

  private static String title(String title, String zone) {
    return title + " (" + zone + ")";
  }

  private static HaltNote at(HaltNote note, String zone) {
    return new HaltNote(
        note.id(), note.verdict(), title(note.title(), zone), note.parts(), note.because());
  }

  private static RemedyNote at(RemedyNote note, String zone) {
    return new RemedyNote(
        note.id(),
        note.hold(),
        note.undated(),
        title(note.title(), zone),
        note.parts(),
        note.about().isEmpty() ? zone : note.about(),
        note.because());
  }

  private static CautionNote at(CautionNote note, String zone) {
    return new CautionNote(
        note.id(),
        note.severity(),
        title(note.title(), zone),
        note.parts(),
        note.about().isEmpty() ? zone : note.about(),
        note.general(),
        note.because());
  }
}
