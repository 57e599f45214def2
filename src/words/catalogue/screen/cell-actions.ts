import type { Area } from '../translation.ts';

/** Actions on cells of the grid, and what is told of them. */
export const cellActions = {
  'Computed figures cannot be emptied: they follow from the cells that are filled in.': {
    de: 'Berechnete Werte lassen sich nicht leeren: Sie folgen aus den ausgefüllten Zellen.',
    fr: 'Les valeurs calculées ne se vident pas\u00a0: elles découlent des cellules remplies.',
  },
  'Cut of {n, plural, one {# cell} other {# cells}}': {
    de: 'Ausschneiden von {n, plural, one {# Zelle} other {# Zellen}}',
    fr: 'Couper {n, plural, one {# cellule} other {# cellules}}',
  },
  '{n, plural, one {# cell} other {# cells}} cut.': {
    de: '{n, plural, one {# Zelle} other {# Zellen}} ausgeschnitten.',
    fr: '{n, plural, one {# cellule coupée} other {# cellules coupées}}.',
  },
  'Clearing of {n, plural, one {# cell} other {# cells}}': {
    de: 'Leeren von {n, plural, one {# Zelle} other {# Zellen}}',
    fr: 'Effacement de {n, plural, one {# cellule} other {# cellules}}',
  },
  '{n, plural, one {# cell} other {# cells}} cleared.': {
    de: '{n, plural, one {# Zelle} other {# Zellen}} geleert.',
    fr: '{n, plural, one {# cellule effacée} other {# cellules effacées}}.',
  },
  '{column}: {problem}': { de: '{column}: {problem}', fr: '{column}\u00a0: {problem}' },
  'Edit of {column}': { de: 'Änderung: {column}', fr: 'Modification\u00a0: {column}' },
  '{n, plural, one {# reference follows} other {# references follow}} the new tag {tag}.': {
    de: '{n, plural, one {# Verweis folgt} other {# Verweise folgen}} dem neuen Kennzeichen {tag}.',
    fr: '{n, plural, one {# référence suit} other {# références suivent}} le nouveau repère {tag}.',
  },
  'Edit of {n, plural, one {# cell} other {# cells}}': {
    de: 'Ändern von {n, plural, one {# Zelle} other {# Zellen}}',
    fr: 'Modification de {n, plural, one {# cellule} other {# cellules}}',
  },
  '{n, plural, one {# cell} other {# cells}} changed.': {
    de: '{n, plural, one {# Zelle} other {# Zellen}} geändert.',
    fr: '{n, plural, one {# cellule modifiée} other {# cellules modifiées}}.',
  },
  'There is no row above to fill from.': {
    de: 'Darüber ist keine Zeile, aus der auszufüllen wäre.',
    fr: 'Il n’y a pas de ligne au-dessus à recopier.',
  },
  'Computed figures cannot be filled: they follow from the cells that are filled in.': {
    de: 'Berechnete Werte lassen sich nicht ausfüllen: Sie folgen aus den ausgefüllten Zellen.',
    fr: 'Les valeurs calculées ne se remplissent pas\u00a0: elles découlent des cellules remplies.',
  },
  'Tags are not filled down, as no two rows may share one.': {
    de: 'Kennzeichen werden nicht nach unten ausgefüllt, da keine zwei Zeilen dasselbe tragen dürfen.',
    fr: 'Les repères ne sont pas recopiés vers le bas, car deux lignes ne peuvent porter le même.',
  },
  '{n, plural, one {# cell} other {# cells}} filled.': {
    de: '{n, plural, one {# Zelle} other {# Zellen}} ausgefüllt.',
    fr: '{n, plural, one {# cellule remplie} other {# cellules remplies}}.',
  },
  'Tags are left as they are, as no two rows may share one.': {
    de: 'Kennzeichen bleiben, wie sie sind, da keine zwei Zeilen dasselbe tragen dürfen.',
    fr: 'Les repères restent tels quels, car deux lignes ne peuvent porter le même.',
  },
  'Fill of {n, plural, one {# cell} other {# cells}}': {
    de: 'Ausfüllen von {n, plural, one {# Zelle} other {# Zellen}}',
    fr: 'Remplissage de {n, plural, one {# cellule} other {# cellules}}',
  },
  'Nothing was pasted, as {n, plural, one {one cell} other {# cells}} cannot be taken. {problem}': {
    de: 'Nichts eingefügt: {n, plural, one {Eine Zelle lässt} other {# Zellen lassen}} sich nicht übernehmen. {problem}',
    fr: 'Rien n’a été collé\u00a0: {n, plural, one {une cellule ne peut être prise} other {# cellules ne peuvent être prises}}. {problem}',
  },
  '{n, plural, one {# more cell} other {# more cells}} cannot be taken.': {
    de: '{n, plural, one {# weitere Zelle lässt} other {# weitere Zellen lassen}} sich nicht übernehmen.',
    fr: '{n, plural, one {# autre cellule ne peut être prise} other {# autres cellules ne peuvent être prises}}.',
  },
  'Line {line}, {column}: {problem}': {
    de: 'Zeile {line}, {column}: {problem}',
    fr: 'Ligne {line}, {column}\u00a0: {problem}',
  },
  'The clipboard holds no text to paste.': {
    de: 'Die Zwischenablage enthält keinen Text zum Einfügen.',
    fr: 'Le presse-papiers ne contient aucun texte à coller.',
  },
  'The clipboard holds headings only, and no rows below them.': {
    de: 'Die Zwischenablage enthält nur Überschriften und keine Zeilen darunter.',
    fr: 'Le presse-papiers ne contient que des intitulés, sans lignes en dessous.',
  },
  'Computed figures cannot be pasted over: they follow from the cells that are filled in.': {
    de: 'Berechnete Werte lassen sich nicht überschreiben: Sie folgen aus den ausgefüllten Zellen.',
    fr: 'Les valeurs calculées ne se remplacent pas par collage\u00a0: elles découlent des cellules remplies.',
  },
  'left out as computed: {columns}': {
    de: 'weggelassen, weil berechnet: {columns}',
    fr: 'écarté, car calculé\u00a0: {columns}',
  },
  'left out as this sheet has no such column: {headings}': {
    de: 'weggelassen, weil dieses Blatt keine solche Spalte hat: {headings}',
    fr: 'écarté, car cette feuille n’a pas de telle colonne\u00a0: {headings}',
  },
  '{n, plural, one {# column} other {# columns}} beyond the last one left out': {
    de: '{n, plural, one {# Spalte} other {# Spalten}} hinter der letzten weggelassen',
    fr: '{n, plural, one {# colonne écartée} other {# colonnes écartées}} au-delà de la dernière',
  },
  'The pasted cells hold what is there already.': {
    de: 'Die eingefügten Zellen enthalten, was dort schon steht.',
    fr: 'Les cellules collées contiennent ce qui s’y trouve déjà.',
  },
  'Paste of {n, plural, one {# row} other {# rows}}': {
    de: 'Einfügen von {n, plural, one {# Zeile} other {# Zeilen}} aus der Zwischenablage',
    fr: 'Collage de {n, plural, one {# ligne} other {# lignes}}',
  },
  '{rows, plural, one {# row} other {# rows}} of {columns, plural, one {# column} other {# columns}} pasted': {
    de: '{rows, plural, one {# Zeile} other {# Zeilen}} mit {columns, plural, one {# Spalte} other {# Spalten}} eingefügt',
    fr: '{rows, plural, one {# ligne collée} other {# lignes collées}}, sur {columns, plural, one {# colonne} other {# colonnes}}',
  },
  '{rows, plural, one {# row} other {# rows}} of {columns, plural, one {# column} other {# columns}} pasted, {added} of them new': {
    de: '{rows, plural, one {# Zeile} other {# Zeilen}} mit {columns, plural, one {# Spalte} other {# Spalten}} eingefügt, davon {added} neu',
    fr: '{rows, plural, one {# ligne collée} other {# lignes collées}}, sur {columns, plural, one {# colonne} other {# colonnes}}, dont {added} en plus',
  },
  '{n, plural, one {# draw} other {# draws}} in watts turned into mA, such as {example}': {
    de: '{n, plural, one {# Wert} other {# Werte}} von Watt in mA umgerechnet, zum Beispiel: {example}',
    fr: '{n, plural, one {# valeur en watts convertie} other {# valeurs en watts converties}} en mA, par exemple\u00a0: {example}',
  },
  '{one}; {other}': { de: '{one}; {other}', fr: '{one}\u202f; {other}' },
  'The browser does not let the page write to the clipboard. Use Ctrl+C in the table instead.': {
    de: 'Der Browser lässt die Seite nicht in die Zwischenablage schreiben. Stattdessen Strg+C in der Tabelle drücken.',
    fr: 'Le navigateur ne laisse pas la page écrire dans le presse-papiers. Utiliser Ctrl+C dans le tableau.',
  },
  'The browser does not let the page write to the clipboard. Use Ctrl+X in the table instead.': {
    de: 'Der Browser lässt die Seite nicht in die Zwischenablage schreiben. Stattdessen Strg+X in der Tabelle drücken.',
    fr: 'Le navigateur ne laisse pas la page écrire dans le presse-papiers. Utiliser Ctrl+X dans le tableau.',
  },
  'There is nothing to undo.': { de: 'Es gibt nichts rückgängig zu machen.', fr: 'Il n’y a rien à annuler.' },
  'There is nothing to redo.': { de: 'Es gibt nichts zu wiederholen.', fr: 'Il n’y a rien à rétablir.' },
  'Undone: {action}.': { de: 'Rückgängig gemacht: {action}.', fr: 'Annulé\u00a0: {action}.' },
  'Redone: {action}.': { de: 'Wiederholt: {action}.', fr: 'Rétabli\u00a0: {action}.' },
  'This schedule is shown read-only: nothing can be changed.': {
    de: 'Diese Lastaufstellung ist schreibgeschützt: Es lässt sich nichts ändern.',
    fr: 'Ce bilan de charge est en lecture seule\u00a0: rien ne peut être modifié.',
  },
  'Select a cell first.': { de: 'Erst eine Zelle wählen.', fr: 'Sélectionner d’abord une cellule.' },
} satisfies Area;
