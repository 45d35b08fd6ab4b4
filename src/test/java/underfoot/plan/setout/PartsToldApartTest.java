package underfoot.plan.setout;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import underfoot.knowledge.Unknown;
import underfoot.scenario.Point;
import underfoot.scenario.Reading;

/** Records that say themselves when they are equal leave no part of theirs out. */
class PartsToldApartTest {
  @ParameterizedTest
  @ValueSource(
      classes = {
        TileTask.class,
        BoardTask.class,
        BoardTask.Deck.class,
        BoardTask.Fixing.class,
        Weights.class,
        Field.Opening.class,
        Point.class,
        Reading.class,
        Unknown.class
      })
  void two_are_equal_only_if_every_part_is(Class<?> type) throws ReflectiveOperationException {
    Object one = some(type, -1);
    assertThat(some(type, -1)).isEqualTo(one).hasSameHashCodeAs(one);
    for (int i = 0; i < type.getRecordComponents().length; i++) {
      assertThat(some(type, i))
          .as("with %s changed", type.getRecordComponents()[i])
          .isNotEqualTo(one);
    }
    assertThat(one).isNotEqualTo(type.getSimpleName());
  }

  /** A record whose parts are all of the first sort, but for one of the second. */
  private static Object some(Class<?> type, int changed) throws ReflectiveOperationException {
    RecordComponent[] parts = type.getRecordComponents();
    Object[] values = new Object[parts.length];
    for (int i = 0; i < parts.length; i++) {
      values[i] = part(parts[i], i == changed ? 1 : 0);
    }
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class[]::new);
    var constructor = type.getDeclaredConstructor(types);
    constructor.setAccessible(true);
    return constructor.newInstance(values);
  }

  private static Object part(RecordComponent part, int sort) throws ReflectiveOperationException {
    Class<?> type = part.getType();
    if (type == double.class) {
      return 1.5 + sort;
    } else if (type == int.class) {
      return 1 + sort;
    } else if (type == long.class) {
      return 1L + sort;
    } else if (type == boolean.class) {
      return sort == 1;
    } else if (type == String.class) {
      return "part " + sort;
    } else if (type == OptionalDouble.class) {
      return OptionalDouble.of(sort);
    } else if (type == Coordinate.class) {
      return new Coordinate(sort, 2);
    } else if (Geometry.class.isAssignableFrom(type)) {
      return Field.SHAPES.toGeometry(new Envelope(0, 1 + sort, 0, 1));
    } else if (type == Optional.class) {
      return Optional.of(some(BoardTask.Deck.class, sort - 1));
    } else if (type == List.class) {
      return List.of(some(Field.Opening.class, sort - 1));
    } else if (type.isEnum()) {
      return type.getEnumConstants()[sort];
    }
    return some(type, sort - 1);
  }
}
