import { exceeds } from '../../electrical/index.ts';
import { count, degrees, kelvins, type Check } from '../check.ts';
import { missingInput, notChecked, overLimit } from './limit-checks.ts';

/** An enclosure this close to its limit is near it [K]. */
const CLOSE = 5;

const input = (rule: string, key: string, what: string, how: string) =>
  missingInput(rule, 'enclosures', key, (row) => `${row.name} has no ${what}, so the temperature inside is not known. ${how}`);

/** What enclosures are held against. */
export const enclosureChecks: readonly Check[] = [
  overLimit({
    rule: 'enclosure-over-temperature', sheet: 'enclosures', key: 'inside', limit: (row) => row.number('maxInside'),
    message: (row, inside, most) => `${row.name} gets ${degrees(inside, most)} inside and may get ${degrees(most, inside)}: ${kelvins(inside - most)} too warm. Use a larger or better ventilated enclosure, or move supplies out of it.`,
  }),
  {
    rule: 'enclosure-near-temperature', sheet: 'enclosures', key: 'inside', severity: 'near', inStatus: true,
    find: (row) => {
      const [inside, most] = [row.number('inside'), row.number('maxInside')];
      if (inside === null || most === null || exceeds(inside, most) || exceeds(most - CLOSE, inside)) return undefined;
      return {
        value: inside, limit: most,
        message: `${row.name} gets ${degrees(inside)} inside, ${kelvins(most - inside)} below the ${degrees(most)} that it may get. Use a larger or better ventilated enclosure to have more in hand.`,
      };
    },
  },
  {
    rule: 'enclosure-loss-partial', sheet: 'enclosures', key: 'supplyLoss', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const missing = row.missing('supplyLoss');
      return missing === 0 ? undefined : {
        value: row.number('supplyLoss'), limit: null,
        message: `${row.name}: the loss of ${count(missing, 'supply')} in it is not wholly known, so it is at least as warm as shown. Enter their efficiency and complete their demand.`,
      };
    },
  },
  input('enclosure-height-missing', 'height', 'height', 'Enter its outside height in mm.'),
  input('enclosure-width-missing', 'width', 'width', 'Enter its outside width in mm.'),
  input('enclosure-depth-missing', 'depth', 'depth', 'Enter its outside depth in mm.'),
  input('enclosure-mounting-missing', 'mounting', 'mounting', 'Choose how it stands.'),
  input('enclosure-ambient-missing', 'ambient', 'ambient temperature', 'Enter the highest temperature around it in °C.'),
  input('enclosure-other-loss-missing', 'otherLoss', 'loss of its other devices', 'Enter their heat in W; 0 if there are none.'),
  notChecked('enclosure-temperature-not-checked', 'enclosures', 'maxInside', (row) => `${row.name} has no highest inside temperature entered: it is not checked against one. Enter the highest that its contents bear in °C.`),
];
