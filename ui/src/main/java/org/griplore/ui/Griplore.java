package org.griplore.ui;

/** The command line's entry point. */
public final class Griplore {
  private Griplore() {}

  /** Runs one command and exits with its code. */
  public static void main(String[] arguments) {
    System.out.println("griplore");
  }
}
