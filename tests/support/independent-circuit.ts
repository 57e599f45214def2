/** What hangs on a run at one place. */
export interface Load {
  readonly metres: number;
  /** Current that does not depend on the voltage [A], and power that does not [W]. */
  readonly amps: number;
  readonly watts: number;
}

/**
 * Working point of a run, found by letting the node voltages settle hop by hop from the supply: currents give voltages,
 * voltages give currents. From the nominal voltage downwards this comes to rest at the working voltage, or falls to
 * nothing where constant-power devices leave none.
 * @returns `volts` at each load in the order given; `null` where there is no working voltage
 */
export function settle(
  loads: readonly Load[], voltage: number, ohmsPerMetre: number,
): { current: number; endVoltage: number; volts: number[] } | null {
  const order = loads.map((_load, index) => index).sort((one, other) => loads[one]!.metres - loads[other]!.metres);
  const along = order.map((index) => loads[index]!);
  let volts = along.map(() => voltage);
  for (let round = 0; round < 100_000; round += 1) {
    const currents = along.map(({ amps, watts }, index) => amps + watts / volts[index]!);
    let flowing = currents.reduce((sum, amps) => sum + amps, 0);
    const current = flowing;
    let here = voltage;
    let metres = 0;
    const next = along.map((load, index) => {
      here -= flowing * ohmsPerMetre * (load.metres - metres);
      metres = load.metres;
      flowing -= currents[index]!;
      return here;
    });
    if (next.some((value) => value <= 0)) return null;
    const moved = Math.max(0, ...next.map((value, index) => Math.abs(value - volts[index]!)));
    volts = next;
    if (moved < 1e-12) {
      const given = new Array<number>(loads.length);
      order.forEach((index, place) => { given[index] = volts[place]!; });
      return { current, endVoltage: Math.min(voltage, ...volts), volts: given };
    }
  }
  return null;
}
