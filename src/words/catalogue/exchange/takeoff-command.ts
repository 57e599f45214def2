import type { Area } from '../translation.ts';

/** What only the command says of a takeoff. */
export const takeoffCommand = {
  'Lines that need a decision and are not in the schedule: {named}.': {
    de: 'Zeilen, über die zu entscheiden ist und die nicht in der Lastaufstellung stehen: {named}.',
    fr: 'Lignes à décider, qui ne sont pas dans le bilan de charge : {named}.',
  },
  'Lines that need a decision and are not in the schedule: {named} and {count} more.': {
    de: 'Zeilen, über die zu entscheiden ist und die nicht in der Lastaufstellung stehen: {named} und {count} weitere.',
    fr: 'Lignes à décider, qui ne sont pas dans le bilan de charge : {named} et {count} de plus.',
  },
  'The sheet “{sheet}” is read; the sheets are {sheets}. Another is chosen with --sheet-name.': {
    de: 'Gelesen wird das Blatt „{sheet}“; vorhanden sind: {sheets}. Mit --sheet-name ein anderes wählen.',
    fr: 'La feuille « {sheet} » est lue ; feuilles présentes : {sheets}. En choisir une autre avec --sheet-name.',
  },
  'It has no types, so that every name becomes a new one.': {
    de: 'Sie enthält keine Typen; jeder Name wird daher ein neuer Typ.',
    fr: 'Il ne contient pas de types ; chaque nom devient donc un nouveau type.',
  },
} satisfies Area;
