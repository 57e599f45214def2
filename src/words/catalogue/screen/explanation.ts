import type { Area } from '../translation.ts';

/** How the selected figure comes about. */
export const explanation = {
  'row {row}': { de: 'Zeile {row}', fr: 'ligne {row}' },
  unknown: { de: 'unbekannt', fr: 'inconnu' },
  'of row {row}': { de: 'von Zeile {row}', fr: 'de la ligne {row}' },
  'of {tag}': { de: 'von {tag}', fr: 'de {tag}' },
  'Formula {formula}.': { de: 'Formel {formula}.', fr: 'Formule {formula}.' },
  'Go to this {row}': { de: 'Zur Zeile gehen ({row})', fr: 'Aller à la ligne ({row})' },
  'and {n} more': { de: 'und {n} weitere', fr: 'et {n} de plus' },
  'Select a figure to read how it comes about.': {
    de: 'Einen Wert wählen, um zu lesen, wie er zustande kommt.',
    fr: 'Sélectionner une valeur pour lire comment elle est obtenue.',
  },
  'Source: {source}': { de: 'Quelle: {source}', fr: 'Source\u00a0: {source}' },
  'Select a run, or a device on one, to see the voltage along it; a supply or a branch, to see how full each is.': {
    de: 'Eine Leitung oder ein Gerät daran wählen, um die Spannung entlang der Leitung zu sehen; eine Versorgung oder Buslinie, um die Auslastung aller zu sehen.',
    fr: 'Sélectionner une liaison, ou un appareil sur une liaison, pour voir la tension le long de celle-ci\u202f; une alimentation ou une ligne de bus, pour voir le taux de charge de chacune.',
  },
  '{row}: {room}': { de: '{row}: {room}', fr: '{row}\u00a0: {room}' },
  'Run {run}: {said}.': { de: 'Leitung {run}: {said}.', fr: 'Liaison {run}\u00a0: {said}.' },
  'with {conductor} it fails at any length': {
    de: 'mit {conductor} genügt sie bei keiner Länge',
    fr: 'avec {conductor} elle ne convient à aucune longueur',
  },
  'with {conductor} it may be {length} long': {
    de: 'mit {conductor} darf sie {length} lang sein',
    fr: 'avec {conductor} elle peut mesurer {length}',
  },
  '{conductor} is the smallest conductor that does at {length}': {
    de: '{conductor} ist der kleinste Leiter, der bei {length} genügt',
    fr: '{conductor} est le plus petit conducteur qui suffit pour {length}',
  },
  'no conductor of this schedule does at {length}': {
    de: 'bei {length} genügt kein Leiter dieser Lastaufstellung',
    fr: 'aucun conducteur de ce bilan ne suffit pour {length}',
  },
  Explanation: { de: 'Erklärung', fr: 'Explication' },
  'How the selected figure comes about': {
    de: 'Wie der gewählte Wert zustande kommt',
    fr: 'Comment la valeur sélectionnée est obtenue',
  },
  Picture: { de: 'Bild', fr: 'Graphique' },
  'Voltage along the selected run; how full supplies and branches are': {
    de: 'Spannung entlang der gewählten Leitung; Auslastung der Versorgungen und Buslinien',
    fr: 'Tension le long de la liaison sélectionnée\u202f; taux de charge des alimentations et des lignes de bus',
  },
} satisfies Area;
