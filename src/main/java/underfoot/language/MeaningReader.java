package underfoot.language;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads what a sentence of the vocabulary stands for: patterns such as {@code $low : Fact( name ==
 * "{name}" )}, or an effect such as {@code remedy( "{wording}", "" )}. What it cannot read is an
 * {@link IllegalArgumentException} with what is wrong.
 */
final class MeaningReader {
  private final String text;
  private int at;

  private MeaningReader(String text) {
    this.text = text;
  }

  static List<Pattern> patterns(String text) {
    MeaningReader reader = new MeaningReader(text);
    List<Pattern> patterns = new ArrayList<>();
    do {
      patterns.add(reader.pattern());
    } while (!reader.atEnd());
    return List.copyOf(patterns);
  }

  static Effect effect(String text) {
    MeaningReader reader = new MeaningReader(text);
    Effect effect = reader.effect();
    if (!reader.atEnd()) {
      throw reader.wrong("one conclusion");
    }
    return effect;
  }

  private Pattern pattern() {
    Pattern.Quantity quantity = Pattern.Quantity.EACH;
    if (take("not ")) {
      quantity = Pattern.Quantity.NONE;
    } else if (take("exists ")) {
      quantity = Pattern.Quantity.ANY;
    }
    String variable = "";
    if (take("$")) {
      variable = word();
      need(":");
    }
    String type = word();
    Pattern.Type of =
        Pattern.Type.of(type)
            .orElseThrow(
                () ->
                    wrong(
                        "a condition that matches facts and conclusions, as in Fact( name == \"deck\" )"));
    need("(");
    List<Constraint> constraints = new ArrayList<>();
    while (!take(")")) {
      if (!constraints.isEmpty()) {
        need(",");
      }
      constraints.add(constraint(of));
    }
    return new Pattern(quantity, variable, of, constraints);
  }

  private Constraint constraint(Pattern.Type type) {
    String field = word();
    if (!type.fields().contains(field)) {
      throw wrong("one of " + type.word() + "'s fields " + String.join(", ", type.fields()));
    }
    boolean not = take("not in");
    if (not || take("in")) {
      need("(");
      List<String> words = new ArrayList<>();
      do {
        words.add(quoted());
      } while (take(","));
      need(")");
      return new Constraint(
          field,
          not ? Constraint.Operator.IS_NOT : Constraint.Operator.IS,
          new Operand.Words(words));
    }
    Constraint.Operator operator = null;
    for (Constraint.Operator one : Constraint.Operator.values()) {
      if (startsWith(one.sign())
          && (operator == null || one.sign().length() > operator.sign().length())) {
        operator = one;
      }
    }
    if (operator == null) {
      throw wrong("==, !=, <, <=, >, >=, in or not in");
    }
    need(operator.sign());
    if (operator.ofNumbers() != field.equals("number")) {
      throw wrong("numbers compared by <, <=, >, >=, and words by == or !=");
    }
    return new Constraint(field, operator, operand());
  }

  private Operand operand() {
    if (!startsWith("$")) {
      return new Operand.Words(List.of(quoted()));
    }
    Operand.Of of = of();
    boolean plus = take("+");
    return plus || take("-") ? new Operand.Sum(of, plus, of()) : of;
  }

  private Operand.Of of() {
    need("$");
    String variable = word();
    need(".");
    return new Operand.Of(variable, word());
  }

  private Effect effect() {
    String word = word();
    Effect.Verb verb =
        Effect.Verb.of(word)
            .orElseThrow(
                () ->
                    wrong(
                        "one of " + Effect.Verb.words() + ", as in remedy( \"{wording}\", \"\" )"));
    need("(");
    List<String> words = new ArrayList<>();
    while (!take(")")) {
      if (!words.isEmpty()) {
        need(",");
      }
      words.add(take(Effect.ABOUT) ? Effect.ABOUT : quoted());
    }
    if (words.size() != verb.places().size()) {
      throw wrong(word + " with " + verb.places().size() + " words in brackets");
    }
    return new Effect(verb, words);
  }

  private String quoted() {
    need("\"");
    int end = text.indexOf('"', at);
    if (end < 0) {
      throw wrong("a closing quotation mark");
    }
    String quoted = text.substring(at, end);
    at = end + 1;
    return quoted.intern();
  }

  private String word() {
    blanks();
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    return text.substring(start, at);
  }

  private void blanks() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private boolean atEnd() {
    blanks();
    return at == text.length();
  }

  private boolean startsWith(String sign) {
    blanks();
    return text.startsWith(sign, at);
  }

  private boolean take(String sign) {
    if (startsWith(sign)) {
      at += sign.length();
      return true;
    }
    return false;
  }

  private void need(String sign) {
    if (!take(sign)) {
      throw wrong(sign);
    }
  }

  private IllegalArgumentException wrong(String wanted) {
    String rest = text.substring(Math.min(at, text.length()));
    String found =
        rest.isEmpty() ? "the end" : rest.length() > 60 ? rest.substring(0, 60) + "…" : rest;
    return new IllegalArgumentException("wanted " + wanted + "; found: " + found);
  }
}
