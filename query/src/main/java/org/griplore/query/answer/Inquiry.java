package org.griplore.query.answer;

import java.util.List;
import java.util.Map;

/**
 * The question an answer belongs to.
 *
 * @param kind the question's word: {@code placings}, {@code find} ...
 * @param sentence the question in words
 * @param options the options as given, by name; the same names in command line and address
 */
public record Inquiry(String kind, String sentence, Map<String, List<String>> options) {}
