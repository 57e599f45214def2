import { message } from '../../words/index.ts';
import type { Check } from '../check.ts';
import { missingInput, notChecked, overLimit, overTarget, unknown } from './limit-checks.ts';

/** What relay outputs are held against. */
export const outputChecks: readonly Check[] = [
  overLimit({
    rule: 'output-over-rating', sheet: 'outputs', key: 'current', limit: (row) => row.number('rating'),
    message: message(
      '{name} switches {value} with a contact rated {limit} for {kind, select, resistive {resistive} lamp {lamp} motor {motor} other {coil}} loads: {excess} too much. Share the load over more outputs, use a stronger contact, or let it switch a contactor.'
    ),
    values: (row) => ({ kind: String(row.value('kind')) }),
  }),
  overLimit({
    rule: 'output-over-inrush', sheet: 'outputs', key: 'inrushTotal', limit: (row) => row.numberOf('contact', 'inrush'),
    message: message(
      '{name} sees an inrush of {value} and its contact may make {limit}: {excess} too much. Share the load over more outputs, or limit the inrush.'
    ),
  }),
  overTarget({
    rule: 'output-over-target', sheet: 'outputs', current: 'current', rating: 'rating',
    message: message(
      '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: share the load over more outputs, or use a stronger contact.'
    ),
  }),
  missingInput(
    'output-contact-missing', 'outputs', 'contact',
    message('{name} has no contact entered, so its rating is not known. Choose one of the contacts.')
  ),
  missingInput(
    'output-kind-missing', 'outputs', 'kind',
    message(
      '{name} has no kind of load entered, and a contact is rated for each. Choose resistive, lamp, motor or coil.'
    )
  ),
  missingInput(
    'output-power-missing', 'outputs', 'power',
    message(
      '{name} has no power entered, so its current is not known. Enter the power of one load in W; 0 for a spare output.'
    )
  ),
  {
    rule: 'output-rating-missing', sheet: 'outputs', key: 'rating', severity: 'incomplete', inStatus: true,
    find: (row) => {
      const [contact, kind] = [row.own('contact'), row.own('kind')];
      if (row.number('rating') !== null || contact === null || kind === null) return undefined;
      return unknown(row, message(
        '{name}: the contact {contact} has no rating for {kind, select, resistive {resistive} lamp {lamp} motor {motor} other {coil}} loads. Enter it on the sheet {sheet}, or choose another contact.'
      ), {
        contact: String(contact), kind: String(kind), sheet: row.titleOf('contacts'),
      });
    },
  },
  notChecked(
    'output-inrush-not-checked', 'outputs', 'inrush',
    message(
      '{name} has no inrush entered: whether the contact may make it is not checked. Enter the peak current of one load in A.'
    ),
    (row) => row.number('power') !== 0
  ),
  {
    rule: 'output-making-not-checked', sheet: 'outputs', key: 'inrushHeadroom', severity: 'note',
    find: (row) => row.number('inrushTotal') === null || row.numberOf('contact', 'inrush') !== null ? undefined
      : unknown(
        row,
        message(
          '{name} has an inrush but its contact has none entered that it may make: it is not checked. Enter it on the sheet {sheet}.'
        ),
        { sheet: row.titleOf('contacts') }
      ),
  },
  notChecked(
    'output-feed-not-checked', 'outputs', 'feed',
    message('{name} has no feed entered: its current counts in none. Choose the feed behind the contact.'),
    (row) => row.number('power') !== 0
  ),
];
