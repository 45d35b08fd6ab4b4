package underfoot.reasoning;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.drools.model.functions.Function1;
import org.drools.model.functions.HashedExpression;
import underfoot.buildup.Caution;
import underfoot.buildup.Conclusion;
import underfoot.buildup.Finding;
import underfoot.buildup.Laid;
import underfoot.buildup.Remedy;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Figure;
import underfoot.knowledge.Unknown;
import underfoot.language.Pattern;

/**
 * How the engine reads what rules may match: the class of each sort of thing, and its fields.
 *
 * @param type the class
 * @param fields its fields by the names that vocabulary files use
 */
record Matchable(Class<?> type, Map<String, Field> fields) {
  private static final Map<Pattern.Type, Matchable> ALL = new EnumMap<>(Pattern.Type.class);

  static {
    sort(Pattern.Type.FACT, Fact.class)
        .with("name", Fact::name)
        .with("about", Fact::about)
        .with("text", Fact::text)
        .with("says", Fact::says)
        .with("number", Fact::number)
        .with("from", fact -> fact.from().word());
    sort(Pattern.Type.UNKNOWN, Unknown.class)
        .with("name", Unknown::name)
        .with("about", Unknown::about);
    sort(Pattern.Type.FIGURE, Figure.class)
        .with("name", Figure::name)
        .with("number", Figure::number);
    sort(Pattern.Type.LAID, Laid.class)
        .with("layer", Laid::getLayer)
        .with("family", Laid::getFamily)
        .with("rule", Laid::getRule);
    sort(Pattern.Type.CONCLUSION, Conclusion.class).with("rule", Conclusion::getRule);
    sort(Pattern.Type.REMEDY, Remedy.class)
        .with("rule", Remedy::getRule)
        .with("wording", Remedy::wording)
        .with("about", Remedy::about);
    sort(Pattern.Type.CAUTION, Caution.class)
        .with("rule", Caution::getRule)
        .with("wording", Caution::wording)
        .with("about", Caution::about);
    sort(Pattern.Type.FINDING, Finding.class)
        .with("rule", Finding::getRule)
        .with("wording", Finding::wording)
        .with("about", Finding::about);
  }

  static Matchable of(Pattern.Type type) {
    return ALL.get(type);
  }

  /** The field of a name. */
  Field field(String name) {
    return fields.get(name);
  }

  /**
   * A field. The engine tells fields apart by their id, so that rules that ask the same share it.
   *
   * @param id unique among all fields
   * @param number its number among the fields of its class
   * @param isNumber whether it is a number rather than a word
   * @param read how it is read
   */
  record Field(String id, int number, boolean isNumber, Function1<Object, Object> read)
      implements Function1<Object, Object>, HashedExpression {
    @Override
    public Object apply(Object thing) {
      return read.apply(thing);
    }

    double number(Object thing) {
      return (Double) read.apply(thing);
    }

    @Override
    public String getExpressionHash() {
      return id;
    }
  }

  private static <T> Builder<T> sort(Pattern.Type type, Class<T> of) {
    Map<String, Field> fields = new HashMap<>();
    ALL.put(type, new Matchable(of, fields));
    return new Builder<>(of, fields);
  }

  private record Builder<T>(Class<T> of, Map<String, Field> fields) {
    @SuppressWarnings("unchecked")
    Builder<T> with(String name, Function1<T, ?> read) {
      fields.put(
          name,
          new Field(
              of.getSimpleName() + '.' + name,
              fields.size(),
              name.equals("number"),
              (Function1<Object, Object>) (Function1<?, ?>) read));
      return this;
    }
  }
}
