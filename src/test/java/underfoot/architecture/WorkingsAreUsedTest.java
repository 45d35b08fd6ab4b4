package underfoot.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import underfoot.knowledge.Workings;
import underfoot.working.Working;

/** No working exists only for the command that shows it: the advice works by the same formulas. */
class WorkingsAreUsedTest {
  private static final String WORKINGS = "underfoot.working";
  private static final Set<String> ONLY_SHOW = Set.of(WORKINGS, "underfoot.cli");

  /** The heating programme is dated, so it is worked out with the plan of the work. */
  private static final Set<String> STILL_TO_COME = Set.of();

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("underfoot");

  @Test
  void every_working_is_called_by_the_advice() {
    Set<String> unused = new TreeSet<>();
    for (Working working : Workings.standard().all()) {
      if (!used(OURS.get(working.getClass()), true)) {
        unused.add(working.name());
      }
    }
    assertThat(STILL_TO_COME).containsAll(unused);
  }

  /** The catalogue names every formula, so that it calls none. */
  private static boolean isCatalogue(JavaClass user) {
    return user.isEquivalentTo(Workings.class);
  }

  /** Called from outside, or by another formula that is. */
  private static boolean used(JavaClass formula, boolean further) {
    for (Dependency dependency : formula.getDirectDependenciesToSelf()) {
      JavaClass user = outermost(dependency.getOriginClass());
      if (!ONLY_SHOW.contains(user.getPackageName()) && !isCatalogue(user)) {
        return true;
      }
      boolean other = !user.equals(formula) && !isCatalogue(user);
      if (further && other && user.getPackageName().equals(WORKINGS) && used(user, false)) {
        return true;
      }
    }
    return false;
  }

  private static JavaClass outermost(JavaClass one) {
    return one.getEnclosingClass().map(WorkingsAreUsedTest::outermost).orElse(one);
  }
}
