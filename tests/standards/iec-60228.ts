/**
 * Maximum direct-current resistance of copper conductors at 20 °C [Ω/km] by cross-section [mm²], from IEC 60228 as
 * reprinted by three independent pages that agree. Table numbers (2004 edition: class 1 Table 1, class 2 Table 2, class
 * 5 Table 3) from memory.
 */
export const IEC_60228 = {
  solidOrStranded: {
    0.5: 36.0, 0.75: 24.5, 1: 18.1, 1.5: 12.1, 2.5: 7.41, 4: 4.61, 6: 3.08, 10: 1.83, 16: 1.15,
  } as Record<number, number>,
  flexible: {
    0.5: 39.0, 0.75: 26.0, 1: 19.5, 1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.30, 10: 1.91, 16: 1.21,
  } as Record<number, number>,
};
