package underfoot.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import underfoot.scenario.Answers;
import underfoot.scenario.Place;
import underfoot.scenario.Point;
import underfoot.scenario.Scenario;
import underfoot.scenario.StatedFact;
import underfoot.scenario.Value;

/** What the page draws on the plan of the room, by the ids of what was asked. */
final class PageDrawn {
  private static final String DOORS = "room.doors[]";
  private static final List<String> OF_A_DOOR = List.of("wall", "from", "width", "opens", "hinge");

  private PageDrawn() {}

  /** The room, what lies and stands in it, and its spot levels in millimetres, as it is drawn. */
  static Map<String, Object> of(Answers answers) {
    Map<String, Object> drawn = new LinkedHashMap<>();
    Scenario room = answers.scenario();
    drawn.put("room.outline", corners(room.outline()));
    drawn.put(
        "levels.readings",
        room.readings().stream().map(one -> List.of(one.x(), one.y(), one.z())).toList());
    for (Place place : answers.places()) {
      String id = place.id();
      switch (place.fact().kind()) {
        case POINTS ->
            room.zones().stream()
                .filter(zone -> place.fact().ofEntries() && zone.name().equals(place.about()))
                .forEach(zone -> drawn.put(id, corners(zone.floor().outline())));
        case RECTANGLE ->
            room.find(place.fact().key(), place.about())
                .filter(StatedFact::known)
                .filter(at -> at.value() instanceof Value.Box)
                .ifPresent(at -> drawn.put(id, corners(((Value.Box) at.value()).corners())));
        default -> {
          // it has no place
        }
      }
    }
    return drawn;
  }

  /** Where the doors are, as far as it is said: a number by its size in mm, a word as it is. */
  static List<Map<String, Object>> doors(Answers answers) {
    Scenario room = answers.scenario();
    List<Map<String, Object>> doors = new ArrayList<>();
    for (String name : room.entries(DOORS)) {
      Map<String, Object> door = new LinkedHashMap<>();
      door.put("name", name);
      for (String word : OF_A_DOOR) {
        room.find(DOORS + '.' + word, name)
            .filter(StatedFact::known)
            .ifPresent(
                one -> door.put(word, one.definition().of().isEmpty() ? one.number() : one.text()));
      }
      doors.add(door);
    }
    return doors;
  }

  private static List<List<Double>> corners(List<Point> points) {
    return points.stream().map(one -> List.of(one.x(), one.y())).toList();
  }
}
