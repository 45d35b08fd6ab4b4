package underfoot.reasoning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every example scenario can be read, and its answer keeps the trade's rules. */
class ScenariosReadTest {
  @TestFactory
  Stream<DynamicTest> every_example_is_answered() throws Exception {
    return Floors.examples().stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> answer(file)));
  }

  private static void answer(Path file) throws Exception {
    Assessment assessment =
        Floors.advisor().advise(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
    Invariants.check(assessment);
  }
}
