package org.griplore.store.archive;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A second process that adds to an archive: it waits in the middle, or is killed there. */
public final class AddingProcess {
  static final int KILLED = 9;

  private AddingProcess() {}

  /** Arguments: the archive's folder, and {@code wait}, {@code halt} or {@code halt-keeping}. */
  public static void main(String[] arguments) throws IOException {
    Archive archive = Archive.open(Path.of(arguments[0]));
    Original original =
        arguments[1].equals("halt-keeping")
            ? haltingWhenKept()
            : Figures.original("other.csv", "other");
    Addition addition = archive.begin(original, "table", Figures.NOON);
    for (int test = 0; test < 300; test++) {
      addition.put(Figures.report(test, 5));
    }
    if (arguments[1].equals("halt")) {
      Runtime.getRuntime().halt(KILLED);
    }
    if (arguments[1].equals("wait")) {
      System.out.println("adding");
      System.out.flush();
      System.in.read();
    }
    addition.commit();
    addition.close();
    archive.close();
  }

  /** The process is killed when the original's copy is complete, before it has its name. */
  private static Original haltingWhenKept() {
    byte[] content = "other".getBytes(StandardCharsets.UTF_8);
    int[] openings = {0};
    return Original.of(
        "other.csv",
        "other.csv",
        () -> {
          boolean keeping = ++openings[0] == 2;
          return new ByteArrayInputStream(content) {
            @Override
            public void close() {
              if (keeping) {
                Runtime.getRuntime().halt(KILLED);
              }
            }
          };
        });
  }

  static Process start(Path folder, String how) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return new ProcessBuilder(
            java, "-cp", path, AddingProcess.class.getName(), folder.toString(), how)
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Waits for the end; the exit code. */
  static int end(Process process) throws InterruptedException {
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new IllegalStateException("the second process did not end");
    }
    return process.exitValue();
  }

  /** Waits until the process says that it is adding. */
  static void awaitAdding(Process process) throws IOException {
    InputStream out = process.getInputStream();
    for (int c = out.read(); c != '\n'; c = out.read()) {
      if (c < 0) {
        throw new IllegalStateException("the second process ended early");
      }
    }
  }
}
