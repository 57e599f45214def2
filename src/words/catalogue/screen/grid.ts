import type { Area } from '../translation.ts';

/** What stands in and over the grid. */
export const grid = {
  'Select the whole sheet': { de: 'Das ganze Blatt wählen', fr: 'Sélectionner toute la feuille' },
  Suggestions: { de: 'Vorschläge', fr: 'Suggestions' },
  '{column}, new row': { de: '{column}, neue Zeile', fr: '{column}, nouvelle ligne' },
  '{column}, row {row}': { de: '{column}, Zeile {row}', fr: '{column}, ligne {row}' },
  'formula {formula}': { de: 'Formel {formula}', fr: 'formule {formula}' },
  'own value, in place of the one that follows from the type': {
    de: 'eigener Wert anstelle dessen, der aus dem Gerätetyp folgt',
    fr: 'valeur propre, à la place de celle qui découle du type',
  },
  '{n, plural, one {# row} other {# rows}}': {
    de: '{n, plural, one {# Zeile} other {# Zeilen}}',
    fr: '{n, plural, one {# ligne} other {# lignes}}',
  },
  'no tag': { de: 'ohne Kennzeichen', fr: 'sans repère' },
  '{amount} of {most}, loading unknown, target {target}': {
    de: '{amount} von {most}, Auslastung unbekannt, Zielwert {target}',
    fr: '{amount} sur {most}, taux de charge inconnu, cible {target}',
  },
  '{points} of {limit} points, {share}, {reserve} kept free': {
    de: '{points} von {limit} Plätzen, {share}, {reserve} freigehalten',
    fr: '{points} points sur {limit}, {share}, réserve {reserve}',
  },
  '{points} of {limit} points, {share}': {
    de: '{points} von {limit} Plätzen, {share}',
    fr: '{points} points sur {limit}, {share}',
  },
  'No known rail': { de: 'Keine bekannte Schiene', fr: 'Aucun rail connu' },
  '{current} on no supply': { de: '{current} an keiner Versorgung', fr: '{current} sans alimentation' },
  'No known branch': { de: 'Keine bekannte Buslinie', fr: 'Aucune ligne de bus connue' },
  '{points} points on no branch': {
    de: '{points} Plätze auf keiner Buslinie',
    fr: '{points} points hors ligne de bus',
  },
  '{n, plural, one {# cell} other {# cells}}': {
    de: '{n, plural, one {# Zelle} other {# Zellen}}',
    fr: '{n, plural, one {# cellule} other {# cellules}}',
  },
  '{n, plural, one {# cell} other {# cells}}, sum {sum}': {
    de: '{n, plural, one {# Zelle} other {# Zellen}}, Summe {sum}',
    fr: '{n, plural, one {# cellule} other {# cellules}}, somme {sum}',
  },
  'The clipboard holds {found} rows; a sheet may have at most {most}. Paste fewer.': {
    de: 'Die Zwischenablage enthält {found} Zeilen; ein Blatt darf höchstens {most} haben. Weniger einfügen.',
    fr: 'Le presse-papiers contient {found} lignes ; une feuille peut en avoir au plus {most}. En coller moins.',
  },
} satisfies Area;
