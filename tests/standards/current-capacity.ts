/**
 * Currents that copper conductors carry [A] by cross-section [mm²], PVC of 70 °C. What is remembered was not read.
 */
export const CURRENT_CAPACITY = {
  /** IEC 60364-5-52, two loaded, air of 30 °C: read in reprints; B1 of 1 mm² and B2 of 16 mm² remembered. */
  twoLoadedAt30: {
    B1: { 1: 13.5, 1.5: 17.5, 2.5: 24, 4: 32, 6: 41, 10: 57 } as Record<number, number>,
    B2: { 1: 13, 1.5: 16.5, 2.5: 23, 4: 30, 6: 38, 10: 52, 16: 69 } as Record<number, number>,
    C: { 1: 15, 1.5: 19.5, 2.5: 27, 4: 36, 6: 46, 10: 63 } as Record<number, number>,
    E: { 1: 17, 1.5: 22, 2.5: 30, 4: 40, 6: 51, 10: 70 } as Record<number, number>,
  },
  /** EN 60204-1, Table 6, method B2, three loaded in air of 40 °C: read in two drive manuals, but 16 mm² remembered. */
  threeLoadedAt40: { 0.75: 8.5, 1: 10.1, 1.5: 13.1, 2.5: 17.4, 4: 23, 6: 30, 10: 40, 16: 54 } as Record<number, number>,
  /** By AWG, NFPA 79 at 60 °C in air of 30 °C, read. */
  gauges: { 24: 2, 22: 3, 20: 5, 18: 7, 16: 10, 14: 20, 12: 25, 10: 30 } as Record<number, number>,
  /** Highest rating of protection by AWG, NEC 725.43 and 240.4(D), read. */
  gaugeProtection: { 18: 7, 16: 10, 14: 15, 12: 20, 10: 30 } as Record<number, number>,
};
