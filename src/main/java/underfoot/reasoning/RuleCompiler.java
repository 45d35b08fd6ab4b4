package underfoot.reasoning;

import static org.drools.model.Index.ConstraintType.EQUAL;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.PatternDSL;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;
import org.drools.model.functions.Predicate3;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.drools.modelcompiler.consequence.DroolsImpl;
import org.kie.api.KieBase;
import underfoot.language.Constraint;
import underfoot.language.Effect;
import underfoot.language.Operand;
import underfoot.language.Pattern;
import underfoot.language.Rule;

/**
 * Builds the engine's network of the rules of a pass, straight from what was read of their files.
 * No text reaches the engine and nothing is compiled: a pattern becomes comparisons of fields, a
 * conclusion becomes a call of {@link Draft}. So rules of a stranger can do nothing else, and a
 * changed rule is tried at once.
 */
final class RuleCompiler {
  /** The name under which a session knows its draft. */
  static final String DRAFT = "draft";

  private static final String PACKAGE = "underfoot.rules";
  private static final Global<Draft> SESSION_DRAFT =
      PatternDSL.globalOf(Draft.class, PACKAGE, DRAFT);

  private final Map<String, Variable<Object>> named = new HashMap<>();
  private final Map<String, Matchable> types = new HashMap<>();

  private RuleCompiler() {}

  /**
   * The network of some rules.
   *
   * @param rules rules of one pass, in the order in which the first that can fire fires first
   */
  static KieBase compile(List<Rule> rules) {
    ModelImpl model = new ModelImpl(PACKAGE).addGlobal(SESSION_DRAFT);
    rules.forEach(rule -> model.addRule(new RuleCompiler().rule(rule)));
    return KieBaseBuilder.createKieBaseFromModel(model);
  }

  private org.drools.model.Rule rule(Rule rule) {
    Set<String> used = variables(rule);
    List<RuleItemBuilder<?>> items = new ArrayList<>();
    int number = 0;
    for (Pattern pattern : rule.patterns()) {
      items.add(pattern(pattern, used, "p" + number++));
    }
    List<Effect> effects = rule.effects();
    Variable<Object> thing = named.get("thing");
    if (thing != null && effects.stream().anyMatch(Effect::leans)) {
      items.add(
          PatternDSL.on(SESSION_DRAFT, thing)
              .execute(
                  (Drools drools, Draft draft, Object one) ->
                      draft.conclude(rule.note(), effects, about(one), into(drools))));
    } else {
      items.add(
          PatternDSL.on(SESSION_DRAFT)
              .execute(
                  (Drools drools, Draft draft) ->
                      draft.conclude(rule.note(), effects, "", into(drools))));
    }
    return PatternDSL.rule(PACKAGE, rule.key()).build(items.toArray(new RuleItemBuilder<?>[0]));
  }

  /** Conclusions hold only as long as what they rest on. */
  private static Consumer<Object> into(Drools drools) {
    return ((DroolsImpl) drools)::insertLogical;
  }

  private static String about(Object thing) {
    return (String) Matchable.of(Pattern.Type.FACT).field("about").apply(thing);
  }

  /** The names by which patterns and conclusions speak of what earlier patterns matched. */
  private static Set<String> variables(Rule rule) {
    Set<String> used = new HashSet<>(Set.of("thing"));
    for (Pattern pattern : rule.patterns()) {
      pattern.constraints().forEach(one -> used.addAll(one.variables()));
    }
    return used;
  }

  @SuppressWarnings("unchecked")
  private RuleItemBuilder<?> pattern(Pattern pattern, Set<String> used, String number) {
    Matchable matchable = Matchable.of(pattern.type());
    boolean isNamed = used.contains(pattern.variable());
    Variable<Object> variable =
        (Variable<Object>) PatternDSL.declarationOf(matchable.type(), number);
    PatternDSL.PatternDef<Object> built = PatternDSL.pattern(variable);
    for (Constraint constraint : pattern.constraints()) {
      built = constrained(built, matchable, constraint);
    }
    if (isNamed) {
      named.put(pattern.variable(), variable);
      types.put(pattern.variable(), matchable);
    }
    return switch (pattern.quantity()) {
      case EACH -> built;
      case ANY -> PatternDSL.exists(built);
      case NONE -> PatternDSL.not(built);
    };
  }

  @SuppressWarnings("unchecked")
  private PatternDSL.PatternDef<Object> constrained(
      PatternDSL.PatternDef<Object> pattern, Matchable matchable, Constraint constraint) {
    Matchable.Field field = matchable.field(constraint.field());
    String id = matchable.type().getSimpleName() + '.' + constraint;
    Constraint.Operator operator = constraint.operator();
    if (constraint.with() instanceof Operand.Words words) {
      Predicate1<Object> test = new Words(id, field, operator, words.words());
      return operator == Constraint.Operator.IS && words.words().size() == 1
          ? pattern.expr(
              id,
              test,
              // As a word, or the engine keeps no index and asks each thing of every word.
              PatternDSL.alphaIndexedBy(
                  (Class<Object>) (Class<?>) String.class,
                  EQUAL,
                  field.number(),
                  field,
                  words.words().get(0)))
          : pattern.expr(id, test);
    }
    if (constraint.with() instanceof Operand.Of of) {
      Matchable.Field other = types.get(of.variable()).field(of.field());
      Variable<Object> earlier = named.get(of.variable());
      return field.isNumber()
          ? pattern.expr(id, earlier, new Numbers(id, field, operator, other))
          : pattern.expr(
              id,
              earlier,
              new Same(id, field, other),
              PatternDSL.betaIndexedBy(
                  Object.class, EQUAL, field.number(), field, other, Object.class));
    }
    Operand.Sum sum = (Operand.Sum) constraint.with();
    return pattern.expr(
        id,
        named.get(sum.first().variable()),
        named.get(sum.second().variable()),
        new Sums(
            id,
            field,
            operator,
            sum,
            types.get(sum.first().variable()).field(sum.first().field()),
            types.get(sum.second().variable()).field(sum.second().field())));
  }

  private static boolean holds(double one, Constraint.Operator operator, double other) {
    return switch (operator) {
      case LESS -> one < other;
      case AT_MOST -> one <= other;
      case MORE -> one > other;
      case AT_LEAST -> one >= other;
      case IS, IS_NOT, FIRST_IS, SECOND_IS ->
          throw new IllegalArgumentException(operator + " compares words");
    };
  }

  /** A comparison; rules that ask the same, as its id tells, share it. */
  private interface Shared extends HashedExpression {
    String id();

    @Override
    default String getExpressionHash() {
      return id();
    }
  }

  /** A field against words. */
  private record Words(
      String id, Matchable.Field field, Constraint.Operator operator, List<String> words)
      implements Predicate1<Object>, Shared {
    @Override
    public boolean test(Object thing) {
      String text = (String) field.apply(thing);
      return switch (operator) {
        case IS -> words.contains(text);
        case IS_NOT -> !words.contains(text);
        case FIRST_IS -> words.contains(item(text, 0));
        case SECOND_IS -> words.contains(item(text, 1));
        default -> throw new IllegalArgumentException(operator + " compares numbers");
      };
    }

    private static String item(String list, int place) {
      String[] items = list.split(",", place + 2);
      return place < items.length ? items[place].strip() : "";
    }
  }

  /** A field against a field of something matched before, both words. */
  private record Same(String id, Matchable.Field field, Matchable.Field other)
      implements Predicate2<Object, Object>, Shared {
    @Override
    public boolean test(Object thing, Object earlier) {
      return field.apply(thing).equals(other.apply(earlier));
    }
  }

  /** The same of numbers. */
  private record Numbers(
      String id, Matchable.Field field, Constraint.Operator operator, Matchable.Field other)
      implements Predicate2<Object, Object>, Shared {
    @Override
    public boolean test(Object thing, Object earlier) {
      return holds(field.number(thing), operator, other.number(earlier));
    }
  }

  /** A number against the sum or difference of two. */
  private record Sums(
      String id,
      Matchable.Field field,
      Constraint.Operator operator,
      Operand.Sum sum,
      Matchable.Field one,
      Matchable.Field other)
      implements Predicate3<Object, Object, Object>, Shared {
    @Override
    public boolean test(Object thing, Object first, Object second) {
      return holds(field.number(thing), operator, sum.of(one.number(first), other.number(second)));
    }
  }
}
