import { exceeds } from '../../electrical/index.ts';
import { degrees, kelvins, message, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { missingInput, notChecked, overLimit } from './limit-checks.ts';

/** An enclosure this close to its limit is near it [K]. */
const CLOSE = 5;

/** What enclosures are held against. */
export const enclosureChecks: readonly Check[] = [
  overLimit({
    rule: 'enclosure-over-temperature', sheet: 'enclosures', key: 'inside', limit: (row) => row.number('maxInside'),
    message: message(
      '{name} gets {value} inside and may get {limit}: {excess} too warm. Use a larger or better ventilated enclosure, or move supplies out of it.'
    ),
    write: (value, limit) => ({
      value: degrees(value, limit), limit: roundedDown(degrees(limit, value)),
      excess: roundedUp(kelvins(value - limit)),
    }),
  }),
  {
    rule: 'enclosure-near-temperature', sheet: 'enclosures', key: 'inside', severity: 'near', inStatus: true,
    find: (row) => {
      const [inside, most] = [row.number('inside'), row.number('maxInside')];
      if (inside === null || most === null || exceeds(inside, most) || exceeds(most - CLOSE, inside)) return undefined;
      return {
        value: inside, limit: most,
        message: row.say('{name} gets {inside} inside, {left} below the {most} that it may get. Use a larger or better ventilated enclosure to have more in hand.', {
          inside: degrees(inside), left: roundedDown(kelvins(most - inside)), most: roundedDown(degrees(most)),
        }),
      };
    },
  },
  {
    rule: 'enclosure-loss-partial', sheet: 'enclosures', key: 'supplyLoss', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const missing = row.missing('supplyLoss');
      return missing === 0 ? undefined : {
        value: row.number('supplyLoss'), limit: null,
        message: row.say(
          '{name}: the loss of {missing, plural, one {# supply} other {# supplies}} in it is not wholly known, so it is at least as warm as shown. Enter their efficiency and complete their demand.',
          { missing }
        ),
      };
    },
  },
  missingInput(
    'enclosure-height-missing', 'enclosures', 'height',
    message('{name} has no height, so the temperature inside is not known. Enter its outside height in mm.')
  ),
  missingInput(
    'enclosure-width-missing', 'enclosures', 'width',
    message('{name} has no width, so the temperature inside is not known. Enter its outside width in mm.')
  ),
  missingInput(
    'enclosure-depth-missing', 'enclosures', 'depth',
    message('{name} has no depth, so the temperature inside is not known. Enter its outside depth in mm.')
  ),
  missingInput(
    'enclosure-mounting-missing', 'enclosures', 'mounting',
    message('{name} has no mounting, so the temperature inside is not known. Choose how it stands.')
  ),
  missingInput(
    'enclosure-ambient-missing', 'enclosures', 'ambient',
    message(
      '{name} has no ambient temperature, so the temperature inside is not known. Enter the highest temperature around it in °C.'
    )
  ),
  missingInput(
    'enclosure-other-loss-missing', 'enclosures', 'otherLoss',
    message(
      '{name} has no loss of its other devices, so the temperature inside is not known. Enter their heat in W; 0 if there are none.'
    )
  ),
  notChecked(
    'enclosure-temperature-not-checked', 'enclosures', 'maxInside',
    message(
      '{name} has no highest inside temperature entered: it is not checked against one. Enter the highest that its contents bear in °C.'
    )
  ),
];
