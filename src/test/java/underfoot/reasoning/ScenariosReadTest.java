package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every example scenario can be read and is answered. */
class ScenariosReadTest {
  @TestFactory
  Stream<DynamicTest> every_example_is_answered() throws Exception {
    return Files.list(Path.of("scenarios"))
        .filter(file -> file.toString().endsWith(".yaml"))
        .sorted()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> {
                      Counsel counsel =
                          Floors.advisor()
                              .advise(
                                  Floors.reader().read(file.toString(), Files.readAllBytes(file)));
                      assertThat(counsel.candidates()).isNotNull();
                    }));
  }
}
