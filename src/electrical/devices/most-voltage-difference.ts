/**
 * Share by which the nominal voltage of a device may differ from its rail's where its limits are not known.
 *
 * Source: common practice, no source.
 */
export const MOST_VOLTAGE_DIFFERENCE = 0.1;
