package org.griplore.store.check;

/**
 * One thing that was verified.
 *
 * @param good whether it is as it should be, or harmless
 * @param sentence what was verified, or what is wrong and where
 */
public record CheckLine(boolean good, String sentence) {}
