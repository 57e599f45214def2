import { exceeds } from '../../electrical/index.ts';
import { degrees, kelvins, message, millimetres, roundedDown, roundedUp } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { inItsCase, WORST_IN } from '../worst-in.ts';
import { excessIn, missingInput, overLimit, waitsFor } from './limit-checks.ts';
import { railChecks, wholeLength } from './rail-checks.ts';

/** An enclosure this close to its limit is near it [K]. */
const CLOSE = 5;

/** What enclosures are held against. */
export const enclosureChecks: readonly Check[] = [
  overLimit({
    rule: 'enclosure-over-temperature', sheet: 'enclosures', key: 'top', limit: (row) => row.number('maxInside'),
    message: message(
      '{name} gets {value} at its top, where supplies sit, and may get {limit}: {excess} too warm. Use a larger or better ventilated enclosure, or move supplies out of it.'
    ),
    write: (value, limit) => ({
      value: degrees(value, limit), limit: roundedDown(degrees(limit, value)),
      excess: roundedUp(kelvins(value - limit)),
    }),
    worst: WORST_IN.warmth.enclosures,
  }),
  {
    rule: 'enclosure-near-temperature', sheet: 'enclosures', key: 'top', severity: 'near', inStatus: true,
    find: (row) => {
      const [top, most] = [row.number('top'), row.number('maxInside')];
      if (top === null || most === null || exceeds(top, most) || exceeds(most - CLOSE, top)) return undefined;
      return {
        value: top, limit: most,
        message: inItsCase(row.say('{name} gets {top} at its top, {left} below the {most} that it may get. Use a larger or better ventilated enclosure to have more in hand.', {
          top: degrees(top), left: roundedDown(kelvins(most - top)), most: roundedDown(degrees(most)),
        }), row, WORST_IN.warmth.enclosures),
      };
    },
  },
  waitsFor('enclosure-loss-partial', 'enclosures', 'supplyLoss', message(
    '{name}: the loss of the supplies in it is not wholly known, so it is at least as warm as shown. Enter their efficiency and complete their demand.'
  ), (row) => row.missing('supplyLoss') > 0),
  overLimit({
    rule: 'enclosure-over-width', sheet: 'enclosures', key: 'usedWidth', limit: wholeLength, write: excessIn(millimetres),
    message: message(
      '{name} is to hold {value} of parts on {limit} of mounting rails: {excess} too much. Use a larger enclosure, or move parts out of it.'
    ),
  }),
  {
    rule: 'enclosure-near-width', sheet: 'enclosures', key: 'freeWidth', severity: 'near', inStatus: true,
    find: (row) => {
      const [free, used, whole] = [row.number('freeWidth'), row.number('usedWidth'), wholeLength(row)];
      if (free === null || used === null || whole === null) return undefined;
      if (!exceeds(used, free + used) || exceeds(used, whole)) return undefined;
      return {
        value: free, limit: 0,
        message: row.say('{name} holds {used} of parts on {whole} of mounting rails, {into} into its reserve. Use a larger enclosure, or give up part of the reserve.', {
          used: millimetres(used), whole: roundedDown(millimetres(whole)), into: roundedUp(millimetres(-free, 0)),
        }),
      };
    },
  },
  ...railChecks,
  waitsFor('enclosure-width-partial', 'enclosures', 'usedWidth', message(
    '{name}: the width of some of its parts is not known, so at least as much of its mounting rails is used as shown.'
  ), (row) => wholeLength(row) !== null && row.missing('usedWidth') > 0),
  missingInput('enclosure-rails-missing', 'enclosures', 'rails', message(
    '{name} has no number of mounting rails, so whether its parts fit is not known. Enter how many it has.'
  ), (row) => row.value('railLength') !== null),
  missingInput('enclosure-rail-length-missing', 'enclosures', 'railLength', message(
    '{name} has no length of its mounting rails, so whether its parts fit is not known. Enter the usable length of one in mm.'
  ), (row) => row.value('rails') !== null),
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
    'enclosure-temperature-missing', 'enclosures', 'maxInside',
    message(
      '{name} has no highest inside temperature, so whether it gets too warm is not known. Enter the highest that its contents bear in °C.'
    )
  ),
];
