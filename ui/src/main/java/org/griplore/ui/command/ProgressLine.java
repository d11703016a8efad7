package org.griplore.ui.command;

import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Shows on a terminal how far long work is; says nothing into pipes and files. */
final class ProgressLine implements AutoCloseable {
  private final boolean shown;
  private ProgressBar bar;

  ProgressLine(Terminal terminal) {
    this.shown = terminal.style().colour();
  }

  void show(String what, int done, int total) {
    if (!shown) {
      return;
    }
    if (bar == null) {
      bar =
          new ProgressBarBuilder()
              .setInitialMax(total)
              .setStyle(ProgressBarStyle.ASCII)
              .setUpdateIntervalMillis(100)
              .clearDisplayOnFinish()
              .build();
    }
    bar.stepTo(done);
    bar.setExtraMessage(" " + what);
  }

  @Override
  public void close() {
    end();
  }

  /** Clears the line, so that what is told next begins a new one. */
  void end() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
  }
}
