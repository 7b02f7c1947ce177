/**
 * Exact by definition: the international inch and yard (25.4 mm, 0.9144 m; 1959 agreement) and the
 * avoirdupois ounce (28.349523125 g).
 */
export const mmPerInch = 25.4;
export const metresPerYard = 0.9144;
export const gramsPerOunce = 28.349523125;
