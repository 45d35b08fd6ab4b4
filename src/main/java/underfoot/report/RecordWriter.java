package underfoot.report;

import java.io.Writer;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Writes records, maps and lists as JSON with Jackson's generator. (Its data binding would take
 * five times as long as this to write a first advice.)
 *
 * <p>A record's properties are its components, in their order, under their names, unless others are
 * listed for its type. A list names properties, apart by spaces: {@code path}, {@code path=name} or
 * either followed by {@code ?}. A path is methods without parameters, apart by strokes, called of
 * each element where there are many ({@code size} of the many themselves); its last is the name. An
 * empty name puts the properties of the value in the place of the property; {@code ?} leaves the
 * property out where it is null, empty or 0.
 *
 * <p>Numbers that are none are null, and so is an empty Optional; sets are sorted; an enum's value
 * is its {@code word()}, or its name in small letters.
 */
public class RecordWriter {
  private static final JsonFactory JSON =
      JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  /** Numbers are not rounded. */
  static final double AS_THEY_ARE = 0;

  private static final Map<Class<?>, Map<String, Method>> METHODS = new ConcurrentHashMap<>();

  private final JsonGenerator json;
  private final Map<Class<?>, String> lists;
  private final Map<Class<?>, List<Property>> properties = new HashMap<>();

  /** What numbers are rounded to, as parts of one, or {@link #AS_THEY_ARE}. */
  private double parts;

  /** One property: where its value is found, and what it is called. */
  private record Property(String[] path, String name, boolean unlessEmpty) {
    static List<Property> of(Class<?> type, String listed) {
      List<Property> all = new ArrayList<>();
      if (listed == null) {
        for (RecordComponent one : type.getRecordComponents()) {
          all.add(new Property(new String[] {one.getName()}, one.getName(), false));
        }
        return all;
      }
      for (String one : listed.split(" ")) {
        boolean unlessEmpty = one.endsWith("?");
        String[] halves = (unlessEmpty ? one.substring(0, one.length() - 1) : one).split("=", -1);
        String[] path = halves[0].split("/");
        all.add(
            new Property(path, halves.length > 1 ? halves[1] : path[path.length - 1], unlessEmpty));
      }
      return all;
    }
  }

  /**
   * @param json what is written with
   * @param parts what numbers are rounded to, as parts of one, or {@link #AS_THEY_ARE}
   * @param lists the properties of types, for those that are not simply their components
   */
  RecordWriter(JsonGenerator json, double parts, Map<Class<?>, String> lists) {
    this.json = json;
    this.parts = parts;
    this.lists = lists;
  }

  /** A generator that leaves its writer open. */
  static JsonGenerator generator(Writer out, boolean indented) {
    PrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter(" ", "\n"));
    return JSON.createGenerator(
        new ObjectWriteContext.Base() {
          @Override
          public PrettyPrinter getPrettyPrinter() {
            return indented ? printer : null;
          }

          @Override
          public boolean hasPrettyPrinter() {
            return indented;
          }
        },
        out);
  }

  /**
   * Writes a value made of records, maps, lists, texts and numbers, these as they are.
   *
   * @param value the value
   * @param indented whether it is written for people, on lines of its own
   * @param lists the properties of types, for those that are not simply their components
   * @param out where it is written; left open
   */
  public static void write(
      Object value, boolean indented, Map<Class<?>, String> lists, Writer out) {
    try (JsonGenerator json = generator(out, indented)) {
      new RecordWriter(json, AS_THEY_ARE, lists).value(value);
    }
  }

  /** Writes a value. */
  void value(Object value) {
    if (value == null) {
      json.writeNull();
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof Double number) {
      number(number);
    } else if (value instanceof Number number) {
      json.writeNumber(number.longValue());
    } else if (value instanceof Optional<?> one) {
      value(one.orElse(null));
    } else if (value instanceof OptionalLong one) {
      value(one.isPresent() ? one.getAsLong() : null);
    } else if (value instanceof Enum<?> one) {
      Method word = method(one.getDeclaringClass(), "word");
      value(word == null ? one.name().toLowerCase(Locale.ROOT).replace('_', '-') : call(word, one));
    } else if (value instanceof Collection<?> many) {
      json.writeStartArray();
      (many instanceof Set ? new TreeSet<>(many) : many).forEach(this::value);
      json.writeEndArray();
    } else if (value instanceof Record
        || value instanceof Map
        || lists.containsKey(value.getClass())) {
      object(value, () -> {});
    } else {
      json.writeString(value.toString());
    }
  }

  /** Writes a value that is an object, and something more in it. */
  void object(Object value, Runnable more) {
    json.writeStartObject();
    properties(value, Set.of());
    more.run();
    json.writeEndObject();
  }

  private void properties(Object value, Collection<String> told) {
    if (value instanceof Optional<?> one) {
      one.ifPresent(of -> properties(of, told));
      return;
    }
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (name, of) -> {
            if (!told.contains(name)) {
              property((String) name, of);
            }
          });
      return;
    }
    List<Property> all =
        properties.computeIfAbsent(value.getClass(), type -> Property.of(type, lists.get(type)));
    for (Property one : all) {
      Object of = found(value, one.path, 0);
      if (one.name.isEmpty()) {
        properties(of, all.stream().map(Property::name).toList());
      } else if (!one.unlessEmpty || !isEmpty(of)) {
        property(one.name, of);
      }
    }
  }

  /** Writes a property of the object that is being written. */
  void property(String name, Object value) {
    json.writeName(name);
    value(value);
  }

  /** To so many parts of one, whole ones without a point; null if there is none. */
  private void number(double number) {
    double rounded = parts == AS_THEY_ARE ? number : Math.round(number * parts) / parts;
    if (Double.isNaN(number) || Double.isInfinite(number)) {
      json.writeNull();
    } else if (parts != AS_THEY_ARE && rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15) {
      json.writeNumber((long) rounded);
    } else {
      json.writeNumber(rounded);
    }
  }

  /** Writes what follows with numbers rounded otherwise. */
  void rounded(double to, Runnable what) {
    double before = parts;
    parts = to;
    what.run();
    parts = before;
  }

  private static boolean isEmpty(Object value) {
    return value == null
        || value.equals("")
        || value instanceof Number number && number.doubleValue() == 0
        || value instanceof Optional<?> one && one.isEmpty()
        || value instanceof Collection<?> many && many.isEmpty();
  }

  private static Object found(Object value, String[] path, int from) {
    if (from == path.length) {
      return value;
    }
    if (value instanceof Collection<?> many) {
      if (path[from].equals("size")) {
        return many.size();
      }
      return many.stream().map(one -> found(one, path, from)).toList();
    }
    return found(call(method(value.getClass(), path[from]), value), path, from + 1);
  }

  private static List<Class<?>> supertypes(Class<?> type) {
    List<Class<?>> all = new ArrayList<>(List.of(type));
    for (Class<?> one : type.getInterfaces()) {
      all.addAll(supertypes(one));
    }
    return all;
  }

  private static Method method(Class<?> type, String name) {
    return METHODS
        .computeIfAbsent(type, t -> new ConcurrentHashMap<>())
        .computeIfAbsent(
            name,
            n -> {
              for (Class<?> of : supertypes(type)) {
                try {
                  Method method = of.getDeclaredMethod(n);
                  method.setAccessible(true);
                  return method;
                } catch (NoSuchMethodException elsewhere) {
                  // an interface may have it
                }
              }
              return null;
            });
  }

  private static Object call(Method method, Object of) {
    try {
      return method.invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(method.toString(), e);
    }
  }
}
