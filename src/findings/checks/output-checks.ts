import { amps, type Check } from '../check.ts';
import { missingInput, notChecked, overLimit, overTarget } from './limit-checks.ts';

/** What relay outputs are held against. */
export const outputChecks: readonly Check[] = [
  overLimit({
    rule: 'output-over-rating', sheet: 'outputs', key: 'current', limit: (row) => row.number('rating'),
    message: (row, current, rating) =>
      `${row.name} switches ${amps(current, rating)} with a contact rated ${amps(rating, current)} for ${row.value('kind')} loads: ${amps(current - rating, 0)} too much. Share the load over more outputs, use a stronger contact, or let it switch a contactor.`,
  }),
  overLimit({
    rule: 'output-over-inrush', sheet: 'outputs', key: 'inrushTotal', limit: (row) => row.numberOf('contact', 'contacts', 'inrush'),
    message: (row, inrush, most) =>
      `${row.name} sees an inrush of ${amps(inrush, most)} and its contact may make ${amps(most, inrush)}: ${amps(inrush - most, 0)} too much. Share the load over more outputs, or limit the inrush.`,
  }),
  overTarget({
    rule: 'output-over-target', sheet: 'outputs', current: 'current', rating: 'rating',
    remedy: 'share the load over more outputs, or use a stronger contact.',
  }),
  missingInput('output-contact-missing', 'outputs', 'contact', (row) => `${row.name} has no contact entered, so its rating is not known. Choose one of the contacts.`),
  missingInput('output-kind-missing', 'outputs', 'kind', (row) => `${row.name} has no kind of load entered, and a contact is rated for each. Choose resistive, lamp, motor or coil.`),
  missingInput('output-power-missing', 'outputs', 'power', (row) => `${row.name} has no power entered, so its current is not known. Enter the power of one load in W; 0 for a spare output.`),
  {
    rule: 'output-rating-missing', sheet: 'outputs', key: 'rating', severity: 'incomplete', inStatus: true,
    find: (row) => {
      if (row.number('rating') !== null || row.own('contact') === null || row.own('kind') === null) return undefined;
      return {
        value: null, limit: null,
        message: `${row.name}: the contact ${row.own('contact')} has no rating for ${row.own('kind')} loads. Enter it on the sheet Contacts, or choose another contact.`,
      };
    },
  },
  notChecked('output-inrush-not-checked', 'outputs', 'inrush', (row) => `${row.name} has no inrush entered: whether the contact may make it is not checked. Enter the peak current of one load in A.`, (row) => row.number('power') !== 0),
  {
    rule: 'output-making-not-checked', sheet: 'outputs', key: 'inrushHeadroom', severity: 'note',
    find: (row) => row.number('inrushTotal') === null || row.numberOf('contact', 'contacts', 'inrush') !== null ? undefined
      : { value: null, limit: null, message: `${row.name} has an inrush but its contact has none entered that it may make: it is not checked. Enter it on the sheet Contacts.` },
  },
  notChecked('output-feed-not-checked', 'outputs', 'feed', (row) => `${row.name} has no feed entered: its current counts in none. Choose the feed behind the contact.`, (row) => row.number('power') !== 0),
];
