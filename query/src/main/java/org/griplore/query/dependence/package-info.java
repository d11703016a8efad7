/**
 * What a contrast depends on: whether the difference of two sides changes with rim diameter,
 * section width, vehicle mass, temperature or year.
 */
package org.griplore.query.dependence;
