package org.griplore.query.answer;

/**
 * A footnote of an answer's table.
 *
 * @param number what refers to it; they count from 1
 * @param text what it says
 * @param test key of the test it is about or from; null when of none
 * @param model full name of the model it is about; null when of none
 * @param discipline catalogue key it is about; null when of none
 */
public record Footnote(int number, String text, String test, String model, String discipline) {}
