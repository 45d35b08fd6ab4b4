package underfoot.cli;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import underfoot.knowledge.Phrases;
import underfoot.lesson.ClassBook;
import underfoot.lesson.Marking;
import underfoot.lesson.Question;
import underfoot.report.ClassForms;
import underfoot.report.LessonReport;

/** Takes the answers of a class in on pages: a list of sheets, and a form for each. */
final class ClassPage implements PageServer.Site {
  private final ClassFile kept;
  private final ClassForms forms;

  ClassPage(ClassFile kept, LessonReport report, Phrases phrases) {
    this.kept = kept;
    this.forms = new ClassForms(report, phrases);
  }

  @Override
  public boolean has(String what) {
    return what.isEmpty() || handed(what).isPresent();
  }

  @Override
  public String formsTo() {
    return "'self'";
  }

  /** A sheet by its number among all that were handed out. */
  private Optional<ClassBook.Handed> handed(String what) {
    List<ClassBook.Handed> all = kept.book().sheets();
    return what.matches("[0-9]{1,6}") && Integer.parseInt(what) < all.size()
        ? Optional.of(all.get(Integer.parseInt(what)))
        : Optional.empty();
  }

  @Override
  public synchronized PageServer.Sent get(String what) {
    return page(
        what.isEmpty() ? forms.list(kept.book(), open()) : form(handed(what).orElseThrow()));
  }

  private static PageServer.Sent page(String html) {
    return new PageServer.Sent("text/html", html);
  }

  /** How many questions of each sheet are open. */
  private List<Integer> open() {
    List<Integer> open = new ArrayList<>();
    for (ClassBook.Handed one : kept.book().sheets()) {
      int left = 0;
      for (int i = 1; i <= one.questions().size(); i++) {
        String reply = kept.book().reply(one.pupil(), one.sheet(), i);
        left += Marking.of(one.questions().get(i - 1), reply).read() ? 0 : 1;
      }
      open.add(left);
    }
    return open;
  }

  private String form(ClassBook.Handed one) {
    List<String> answers = new ArrayList<>();
    List<String> again = new ArrayList<>();
    for (int i = 1; i <= one.questions().size(); i++) {
      Question question = one.questions().get(i - 1);
      String reply = kept.book().reply(one.pupil(), one.sheet(), i);
      answers.add(reply);
      again.add(
          Marking.of(question, reply).state() == Marking.State.AGAIN
              ? Marking.of(question, reply).say()
              : "");
    }
    return forms.form(one, answers, again);
  }

  @Override
  public synchronized PageServer.Sent post(String what, String kind, byte[] body) throws UserError {
    ClassBook.Handed one = handed(what).orElseThrow();
    List<ClassBook.Reply> replies = new ArrayList<>();
    for (String pair : new String(body, StandardCharsets.UTF_8).split("&")) {
      String[] parts = pair.split("=", 2);
      if (parts.length == 2 && parts[0].matches("q[1-9][0-9]?")) {
        int number = Integer.parseInt(parts[0].substring(1));
        String answer = URLDecoder.decode(parts[1], StandardCharsets.UTF_8).strip();
        String before = kept.book().reply(one.pupil(), one.sheet(), number);
        if (number <= one.questions().size() && !answer.equals(before) && answer.length() < 200) {
          replies.add(new ClassBook.Reply(one.pupil(), one.sheet(), number, answer));
        }
      }
    }
    if (!replies.isEmpty()) {
      kept.take(replies);
    }
    return get(what);
  }
}
