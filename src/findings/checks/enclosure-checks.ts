import { exceeds } from '../../electrical/index.ts';
import { count, degrees, type Check } from '../check.ts';
import { missingInput, notChecked, overLimit } from './limit-checks.ts';

/** An enclosure this close to its limit is near it [K]. */
const CLOSE = 5;

const input = (key: string, what: string, how: string) =>
  missingInput(`enclosure-${key}-missing`, 'enclosures', key, (row) => `${row.name} has no ${what}, so the temperature inside is not known. ${how}`);

/** What enclosures are held against. */
export const enclosureChecks: readonly Check[] = [
  overLimit({
    rule: 'enclosure-over-temperature', sheet: 'enclosures', key: 'inside', limit: (row) => row.number('maxInside'),
    message: (row, inside, most) => `${row.name} gets ${degrees(inside)} inside and may get ${degrees(most)}: ${(inside - most).toFixed(1)} K too warm. Use a larger or better ventilated enclosure, or move supplies out of it.`,
  }),
  {
    rule: 'enclosure-near-temperature', sheet: 'enclosures', key: 'inside', severity: 'near', inStatus: true,
    find: (row) => {
      const [inside, most] = [row.number('inside'), row.number('maxInside')];
      if (inside === null || most === null || exceeds(inside, most) || exceeds(most - CLOSE, inside)) return undefined;
      return {
        value: inside, limit: most,
        message: `${row.name} gets ${degrees(inside)} inside, ${(most - inside).toFixed(1)} K below the ${degrees(most)} that it may get. Use a larger or better ventilated enclosure to have more in hand.`,
      };
    },
  },
  {
    rule: 'enclosure-loss-partial', sheet: 'enclosures', key: 'supplyLoss', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const missing = row.missing('supplyLoss');
      return missing === 0 ? undefined : {
        value: row.number('supplyLoss'), limit: null,
        message: `${row.name}: the loss of ${count(missing, 'supply row')} in it is not wholly known, so it is at least as warm as shown. Enter their efficiency and complete their demand.`,
      };
    },
  },
  input('height', 'height', 'Enter its outside height in mm.'),
  input('width', 'width', 'Enter its outside width in mm.'),
  input('depth', 'depth', 'Enter its outside depth in mm.'),
  input('mounting', 'mounting', 'Choose how it stands.'),
  input('ambient', 'ambient temperature', 'Enter the highest temperature around it in °C.'),
  input('otherLoss', 'loss of its other devices', 'Enter their heat in W; 0 if there are none.'),
  notChecked('enclosure-temperature-not-checked', 'enclosures', 'maxInside', (row) => `${row.name} has no highest inside temperature entered: it is not checked against one.`),
];
