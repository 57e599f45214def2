import type { Area } from '../translation.ts';

/** What changed between two schedules. */
export const changes = {
  Changes: { de: 'Änderungen', fr: 'Modifications' },
  'revision {revision}': { de: 'Revision {revision}', fr: 'révision {revision}' },
  'revision {revision} of {date}': { de: 'Revision {revision} vom {date}', fr: 'révision {revision} du {date}' },
  'Nothing is different from {since}.': {
    de: 'Kein Unterschied gegenüber {since}.',
    fr: 'Aucune différence. Comparaison avec\u00a0: {since}.',
  },
  'Nothing is different.': { de: 'Kein Unterschied.', fr: 'Aucune différence.' },
  'Compared with {since}. Rows are matched by their tags, then by what they hold.': {
    de: 'Verglichen mit {since}. Zeilen werden nach Kennzeichen, dann nach Inhalt zugeordnet.',
    fr: 'Comparaison avec\u00a0: {since}. Les lignes sont appariées par leurs repères, puis par leur contenu.',
  },
  Details: { de: 'Angaben', fr: 'Données générales' },
  Detail: { de: 'Angabe', fr: 'Donnée' },
  Before: { de: 'Vorher', fr: 'Avant' },
  Now: { de: 'Jetzt', fr: 'Maintenant' },
  'What became of it': { de: 'Was daraus wurde', fr: 'Ce qu’elle est devenue' },
  Values: { de: 'Werte', fr: 'Valeurs' },
  'What that did to totals and statuses': {
    de: 'Auswirkung auf Summen und Status',
    fr: 'Effet sur les totaux et les états',
  },
  'without a tag': { de: 'ohne Kennzeichen', fr: 'sans repère' },
  'added as row {row}': { de: 'neu als Zeile {row}', fr: 'ajoutée en ligne {row}' },
  'removed, was row {was}': { de: 'entfernt, war Zeile {was}', fr: 'supprimée, était la ligne {was}' },
  'moved from row {was} to row {row}': {
    de: 'von Zeile {was} nach Zeile {row} verschoben',
    fr: 'déplacée de la ligne {was} à la ligne {row}',
  },
  changed: { de: 'geändert', fr: 'modifiée' },
} satisfies Area;
