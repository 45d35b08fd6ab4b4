package underfoot.cli;

import java.io.IOException;
import underfoot.scenario.Answers;

final class PageServer implements AutoCloseable {
  PageServer(Workbench bench, Answers begun, int port) throws IOException, Complaint {}

  String address() {
    return "";
  }

  void untilStopped() {}

  @Override
  public void close() {}
}
