import { Matrix, solve } from 'ml-matrix';
import type { Tap } from '../../src/electrical/index.ts';

const MOST_STEPS = 200;
/** Share of the supply voltage that the last step may still have changed; the rounding of the matrix is below it. */
const PRECISION = 1e-11;

/**
 * Voltages of a tapped run by nodal analysis: a matrix of conductances between the places of the cable, constant powers
 * by Newton's method on all nodes at once. It shares neither the formulation nor any code with the software's own
 * solver.
 *
 * @param fedAgainMetres where the same voltage feeds it a second time [m], beyond all taps
 * @returns the voltage at each tap [V], in the order given, or `null` when no voltage above 0 satisfies them all
 */
export function nodalVoltages(
  supplyVolts: number, loopOhmPerMetre: number, taps: readonly Tap[], fedAgainMetres?: number,
): number[] | null {
  const places = [...new Set(taps.map((tap) => tap.distanceMetres))].filter((place) => place > 0).sort((a, b) => a - b);
  const count = places.length;
  if (count === 0) return taps.map(() => supplyVolts);

  const conductances = Matrix.zeros(count, count);
  const injected = Matrix.zeros(count, 1);
  const watts = new Array<number>(count).fill(0);
  places.forEach((place, node) => {
    const siemens = 1 / (loopOhmPerMetre * (place - (places[node - 1] ?? 0)));
    conductances.set(node, node, conductances.get(node, node) + siemens);
    if (node === 0) {
      injected.set(0, 0, siemens * supplyVolts);
    } else {
      conductances.set(node - 1, node - 1, conductances.get(node - 1, node - 1) + siemens);
      conductances.set(node, node - 1, -siemens);
      conductances.set(node - 1, node, -siemens);
    }
  });
  if (fedAgainMetres !== undefined) {
    const [last, siemens] = [count - 1, 1 / (loopOhmPerMetre * (fedAgainMetres - places[count - 1]!))];
    conductances.set(last, last, conductances.get(last, last) + siemens);
    injected.set(last, 0, injected.get(last, 0) + siemens * supplyVolts);
  }
  for (const tap of taps) {
    const node = places.indexOf(tap.distanceMetres);
    if (node < 0) continue;
    injected.set(node, 0, injected.get(node, 0) - (tap.amps ?? 0));
    watts[node] = (watts[node] ?? 0) + (tap.watts ?? 0);
  }

  let volts = Matrix.ones(count, 1).mul(supplyVolts);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const surplus = Matrix.sub(conductances.mmul(volts), injected);
    const jacobian = conductances.clone();
    for (let node = 0; node < count; node += 1) {
      const here = volts.get(node, 0);
      surplus.set(node, 0, surplus.get(node, 0) + (watts[node] ?? 0) / here);
      jacobian.set(node, node, jacobian.get(node, node) - (watts[node] ?? 0) / here ** 2);
    }
    const change = solve(jacobian, surplus);
    volts = Matrix.sub(volts, change);
    if (volts.min() <= 0) return null;
    if (change.abs().max() < PRECISION * supplyVolts) {
      return taps.map((tap) => {
        const node = places.indexOf(tap.distanceMetres);
        return node < 0 ? supplyVolts : volts.get(node, 0);
      });
    }
  }
  return null;
}
