package underfoot.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * A class and all it was asked and answered, as one file keeps it: a line of JSON each for the
 * course, every sheet handed out with its answers, and every answer taken in. Lines are only added;
 * of two answers to one question the later holds, so that whatever is taken in can be mended and
 * nothing is lost.
 *
 * @param course the name of the course
 * @param rules the mark of the rules it was made by
 * @param sheets the sheets handed out, in their order
 * @param replies the answers, the last of each question
 */
public record ClassBook(
    String course, String rules, List<Handed> sheets, Map<Place, String> replies) {
  /** What the first line of a class says it is. */
  public static final String FORMAT = "underfoot.class/1";

  private static final JsonFactory JSON = new JsonFactory();

  /** Copies the list. */
  public ClassBook {
    sheets = List.copyOf(sheets);
  }

  /**
   * The first line.
   *
   * @param format {@link #FORMAT}
   * @param course the name of the course
   * @param rules the mark of the rules
   */
  public record Head(String format, String course, String rules) {}

  /**
   * A sheet as one pupil got it.
   *
   * @param pupil whose it is
   * @param seed what it was drawn with
   * @param sheet its number, from 1
   * @param title its title
   * @param questions what is asked, in order over all its floors
   */
  public record Handed(String pupil, long seed, int sheet, String title, List<Question> questions) {
    /** Copies the list. */
    public Handed {
      questions = List.copyOf(questions);
    }
  }

  /**
   * A question of a pupil's sheet.
   *
   * @param pupil whose
   * @param sheet the number of the sheet, from 1
   * @param question the number of the question, from 1
   */
  public record Place(String pupil, int sheet, int question) {}

  /**
   * An answer taken in.
   *
   * @param pupil whose
   * @param sheet the number of the sheet, from 1
   * @param question the number of the question, from 1
   * @param answer what was written
   */
  public record Reply(String pupil, int sheet, int question, String answer) {
    Place place() {
      return new Place(pupil, sheet, question);
    }
  }

  /** A line that is none of a class. */
  public static final class NotAClass extends Exception {
    private final int line;

    NotAClass(int line) {
      super("line " + line + " is no line of a class", null, false, false);
      this.line = line;
    }

    /** Which line, from 1. */
    public int line() {
      return line;
    }
  }

  /**
   * Reads a class. What a crash left of a last line is passed over.
   *
   * @throws NotAClass if a line says something else
   */
  public static ClassBook read(String text) throws NotAClass {
    String whole = text.substring(0, text.lastIndexOf('\n') + 1);
    Map<String, Object> head = Map.of();
    Map<Place, Handed> sheets = new LinkedHashMap<>();
    Map<Place, String> replies = new LinkedHashMap<>();
    int number = 0;
    for (String line : whole.split("\n")) {
      number++;
      try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), line)) {
        json.nextToken();
        Map<String, Object> said = map(value(json));
        if (number == 1 && FORMAT.equals(said.get("format"))) {
          head = said;
        } else if (said.containsKey("questions") && number > 1) {
          Handed one = handed(said);
          sheets.put(new Place(one.pupil(), one.sheet(), 0), one);
        } else if (said.containsKey("answer") && number > 1) {
          Place place =
              new Place(
                  text(said, "pupil"), (int) number(said, "sheet"), (int) number(said, "question"));
          replies.put(place, text(said, "answer"));
        } else {
          throw new NotAClass(number);
        }
      } catch (JacksonException | ClassCastException | NullPointerException e) {
        throw new NotAClass(number);
      }
    }
    return new ClassBook(
        text(head, "course"), text(head, "rules"), List.copyOf(sheets.values()), replies);
  }

  private static Handed handed(Map<String, Object> said) {
    List<Question> questions = new ArrayList<>();
    for (Object one : list(said, "questions")) {
      questions.add(question(map(one)));
    }
    return new Handed(
        text(said, "pupil"),
        (long) number(said, "seed"),
        (int) number(said, "sheet"),
        text(said, "title"),
        questions);
  }

  private static Question question(Map<String, Object> said) {
    List<Question.Option> options = new ArrayList<>();
    for (Object one : list(said, "options")) {
      Map<String, Object> option = map(one);
      options.add(
          new Question.Option(text(option, "label"), text(option, "text"), text(option, "shows")));
    }
    List<Question.Slip> slips = new ArrayList<>();
    for (Object one : list(said, "slips")) {
      slips.add(new Question.Slip(number(map(one), "number"), text(map(one), "shows")));
    }
    List<Set<String>> right = new ArrayList<>();
    for (Object group : list(said, "right")) {
      right.add(
          ((List<?>) group)
              .stream().map(Object::toString).collect(Collectors.toCollection(LinkedHashSet::new)));
    }
    return new Question(
        text(said, "kind"),
        text(said, "topic"),
        (int) number(said, "level"),
        text(said, "aim"),
        list(said, "given").stream().map(Object::toString).toList(),
        text(said, "ask"),
        options,
        Question.Reply.valueOf(text(said, "reply").toUpperCase(java.util.Locale.ROOT)),
        right,
        number(said, "number"),
        number(said, "within"),
        text(said, "unit"),
        slips,
        text(said, "answer"),
        list(said, "worked").stream().map(Object::toString).toList(),
        List.of(),
        List.of());
  }

  private static Object value(JsonParser json) {
    JsonToken token = json.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> map = new LinkedHashMap<>();
      while (json.nextToken() == JsonToken.PROPERTY_NAME) {
        String name = json.currentName();
        json.nextToken();
        map.put(name, value(json));
      }
      return map;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> list = new ArrayList<>();
      while (json.nextToken() != JsonToken.END_ARRAY) {
        list.add(value(json));
      }
      return list;
    }
    if (token == JsonToken.VALUE_NULL) {
      return null;
    }
    return token != null && token.isNumeric() ? (Object) json.getDoubleValue() : json.getString();
  }

  @SuppressWarnings("unchecked") // only value() makes maps, and their keys are texts
  private static Map<String, Object> map(Object of) {
    return (Map<String, Object>) of;
  }

  private static List<?> list(Map<String, Object> said, String name) {
    return (List<?>) said.getOrDefault(name, List.of());
  }

  private static String text(Map<String, Object> said, String name) {
    return (String) said.getOrDefault(name, "");
  }

  private static double number(Map<String, Object> said, String name) {
    Object number = said.get(name);
    return number == null ? Double.NaN : (Double) number;
  }

  /** The pupils, in the order in which they got sheets. */
  public List<String> pupils() {
    return sheets.stream().map(Handed::pupil).distinct().toList();
  }

  /** The sheet of a pupil. */
  public Optional<Handed> sheet(String pupil, int number) {
    return sheets.stream()
        .filter(one -> one.pupil().equals(pupil) && one.sheet() == number)
        .findFirst();
  }

  /** What a pupil answered last; empty if nothing. */
  public String reply(String pupil, int sheet, int question) {
    return replies.getOrDefault(new Place(pupil, sheet, question), "");
  }

  /** The same with answers more. */
  public ClassBook with(List<Reply> more) {
    Map<Place, String> all = new LinkedHashMap<>(replies);
    more.forEach(one -> all.put(one.place(), one.answer()));
    return new ClassBook(course, rules, sheets, all);
  }
}
