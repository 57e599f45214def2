import type { Area } from '../translation.ts';

/** The forms in which the load table is handed over, and the area of the page where that is done. */
export const forms = {
  Generated: { de: 'Erzeugt am', fr: 'Généré le' },
  'Generated {date} by {software}': { de: 'Erzeugt am {date} mit {software}', fr: 'Généré le {date} avec {software}' },
  Software: { de: 'Software', fr: 'Logiciel' },
  'SHA-256 of the schedule': { de: 'SHA-256 der Lastaufstellung', fr: 'SHA-256 du bilan de charge' },
  'Page {page} of {pages}': { de: 'Seite {page} von {pages}', fr: 'Page {page} sur {pages}' },
  Contents: { de: 'Inhalt', fr: 'Sommaire' },
  'An italic figure is a default or comes from its type, an upright one was entered; ≥ and ≤ stand before figures that follow from a total in which rows are not known yet. Columns without any value, and those that hold nothing but their default, are left out; the assumptions name the defaults.': {
    de: 'Kursiv steht ein Wert, der vorgegeben ist oder vom Gerätetyp kommt, aufrecht ein eingegebener; ≥ und ≤ stehen vor Werten aus einer Summe, in der noch nicht alle Zeilen bekannt sind. Spalten ohne Werte und solche, die nur ihren Vorgabewert enthalten, sind weggelassen; die Vorgabewerte stehen bei den Annahmen.',
    fr: 'Une valeur en italique est une valeur par défaut ou vient du type, une valeur en romain a été saisie\u202f; ≥ et ≤ précèdent les valeurs issues d’un total dont certaines lignes ne sont pas encore connues. Les colonnes sans valeur et celles qui ne contiennent que leur valeur par défaut sont omises\u202f; les hypothèses donnent ces valeurs.',
  },
  'How to read it': { de: 'Lesehilfe', fr: 'Aide à la lecture' },
  'Tinted figures are formulas: change a count, a draw or a diversity, and the totals follow.': {
    de: 'Getönte Werte sind Formeln: Wird eine Anzahl, eine Stromaufnahme oder ein Gleichzeitigkeitsfaktor geändert, folgen die Summen.',
    fr: 'Les valeurs sur fond teinté sont des formules\u00a0: si une quantité, un courant unitaire ou un facteur de simultanéité change, les totaux suivent.',
  },
  'A figure under a heading with * stands as it was worked out and follows no change here, as every figure of the runs does.': {
    de: 'Ein Wert unter einer Überschrift mit * steht so, wie er berechnet wurde, und folgt hier keiner Änderung; das gilt für alle Werte der Leitungen.',
    fr: 'Une valeur sous un titre avec * reste telle qu’elle a été calculée et ne suit aucune modification faite ici, comme toutes les valeurs des liaisons.',
  },
  'An italic figure is a default or comes from its type. A formula that a person typed stands as its value.': {
    de: 'Ein kursiver Wert ist vorgegeben oder kommt vom Gerätetyp. Eine von Hand eingegebene Formel steht als ihr Wert.',
    fr: 'Une valeur en italique est une valeur par défaut ou vient du type. Une formule saisie à la main est remplacée par sa valeur.',
  },
  'Other sheets, such as the findings, stand as they were issued. The schedule is kept unseen in this file as it was issued; what is changed here is not in it.': {
    de: 'Andere Blätter, wie die Befunde, stehen so, wie sie ausgegeben wurden. Die Lastaufstellung ist unsichtbar in dieser Datei enthalten, wie sie ausgegeben wurde; was hier geändert wird, steht nicht darin.',
    fr: 'Les autres feuilles, comme les constats, restent telles qu’elles ont été émises. Le bilan de charge est conservé, masqué, dans ce fichier tel qu’il a été émis\u202f; ce qui est modifié ici n’y figure pas.',
  },
  'What the next person is given: it stands alone on paper, as a page, as a workbook.': {
    de: 'Was weitergegeben wird: für sich allein verständlich, auf Papier, als Seite, als Arbeitsmappe.',
    fr: 'Ce qui est transmis\u00a0: se suffit à lui-même, sur papier, en page, en classeur.',
  },
  Show: { de: 'Anzeigen', fr: 'Afficher' },
  Preview: { de: 'Vorschau', fr: 'Aperçu' },
  Paper: { de: 'Papier', fr: 'Papier' },
  'A4 landscape': { de: 'A4 quer', fr: 'A4 paysage' },
  'A4 portrait': { de: 'A4 hoch', fr: 'A4 portrait' },
  'A3 landscape': { de: 'A3 quer', fr: 'A3 paysage' },
  'A3 portrait': { de: 'A3 hoch', fr: 'A3 portrait' },
  Print: { de: 'Drucken', fr: 'Imprimer' },
  'Save the load table': { de: 'Lasttabelle speichern', fr: 'Enregistrer le tableau de charge' },
  'Save as HTML': { de: 'Als HTML speichern', fr: 'Enregistrer en HTML' },
  'Save as XLSX': { de: 'Als XLSX speichern', fr: 'Enregistrer en XLSX' },
  'Save as CSV': { de: 'Als CSV speichern', fr: 'Enregistrer en CSV' },
  'Saved as {name}.': { de: 'Als {name} gespeichert.', fr: 'Enregistré sous {name}.' },
  'Saved as {name}. It carries the schedule: Open reads it back.': {
    de: 'Als {name} gespeichert. Die Datei enthält die Lastaufstellung: „Öffnen“ liest sie wieder ein.',
    fr: 'Enregistré sous {name}. Le fichier contient le bilan de charge\u00a0: «\u00a0Ouvrir\u00a0» le relit.',
  },
  'Saved as {name}. Its figures are formulas; Open reads the schedule back as it is now.': {
    de: 'Als {name} gespeichert. Die Werte sind Formeln; „Öffnen“ liest die Lastaufstellung wieder ein, wie sie jetzt ist.',
    fr: 'Enregistré sous {name}. Les valeurs sont des formules\u202f; «\u00a0Ouvrir\u00a0» relit le bilan de charge tel qu’il est maintenant.',
  },
  'The workbook could not be made. Check the connection, then try again.': {
    de: 'Die Arbeitsmappe konnte nicht erstellt werden. Die Verbindung prüfen und erneut versuchen.',
    fr: 'Le classeur n’a pas pu être créé. Vérifier la connexion et réessayer.',
  },
  '{name} cannot be compared with.': {
    de: 'Mit {name} kann nicht verglichen werden.',
    fr: 'La comparaison avec {name} est impossible.',
  },
  'It holds one sheet or none. Choose a schedule (.json) or a load table (.html, .xlsx).': {
    de: 'Die Datei enthält nur ein Blatt oder keines. Eine Lastaufstellung (.json) oder eine Lasttabelle (.html, .xlsx) wählen.',
    fr: 'Le fichier contient une seule feuille ou aucune. Choisir un bilan de charge (.json) ou un tableau de charge (.html, .xlsx).',
  },
  '{sheet}, row {row}, {column}: {problem}': {
    de: '{sheet}, Zeile {row}, {column}: {problem}',
    fr: '{sheet}, ligne {row}, {column}\u00a0: {problem}',
  },
  'Choose an older schedule': { de: 'Ältere Lastaufstellung wählen', fr: 'Choisir un bilan de charge antérieur' },
  'Older schedule': { de: 'Ältere Lastaufstellung', fr: 'Bilan de charge antérieur' },
  'or drop it here: a schedule (.json), or a load table saved as .html or .xlsx.': {
    de: 'oder hier ablegen: eine Lastaufstellung (.json) oder eine als .html oder .xlsx gespeicherte Lasttabelle.',
    fr: 'ou le déposer ici\u00a0: un bilan de charge (.json) ou un tableau de charge enregistré en .html ou .xlsx.',
  },
  'Compare with none': { de: 'Ohne Vergleich', fr: 'Sans comparaison' },
  'These changes are a part of the load table too, printed and saved.': {
    de: 'Diese Änderungen gehören auch zur Lasttabelle, gedruckt und gespeichert.',
    fr: 'Ces modifications font aussi partie du tableau de charge, imprimé ou enregistré.',
  },
  Table: { de: 'Tabelle', fr: 'Tableau' },
  'The issues of this schedule, the first one first; they open the load table. The present one is that of the details at the top. Undo takes back each change.': {
    de: 'Die Ausgaben dieser Lastaufstellung, die erste zuerst; mit ihnen beginnt die Lasttabelle. Die aktuelle ist die der Angaben oben. „Rückgängig“ nimmt jede Änderung zurück.',
    fr: 'Les éditions de ce bilan de charge, la première d’abord\u202f; elles ouvrent le tableau de charge. L’édition actuelle est celle des données en haut. «\u00a0Annuler\u00a0» revient sur chaque modification.',
  },
  'No revision is listed yet.': {
    de: 'Noch keine Revision eingetragen.',
    fr: 'Aucune révision n’est encore inscrite.',
  },
  '{column}, line {line}': { de: '{column}, Zeile {line}', fr: '{column}, ligne {line}' },
  Remove: { de: 'Entfernen', fr: 'Retirer' },
  'Remove revision {name}': { de: 'Revision {name} entfernen', fr: 'Retirer la révision {name}' },
  'Remove revision in line {line}': {
    de: 'Revision in Zeile {line} entfernen',
    fr: 'Retirer la révision de la ligne {line}',
  },
  'Revision {name} removed': { de: 'Revision {name} entfernt', fr: 'Révision {name} retirée' },
  'Revision in line {line} removed': {
    de: 'Revision in Zeile {line} entfernt',
    fr: 'Révision de la ligne {line} retirée',
  },
  'Revision {name}: {column} changed': {
    de: 'Revision {name}: {column} geändert',
    fr: 'Révision {name}\u00a0: modification de «\u00a0{column}\u00a0»',
  },
  'Revision in line {line}: {column} changed': {
    de: 'Revision in Zeile {line}: {column} geändert',
    fr: 'Révision de la ligne {line}\u00a0: modification de «\u00a0{column}\u00a0»',
  },
  'Add a revision': { de: 'Revision hinzufügen', fr: 'Ajouter une révision' },
  'Revision added': { de: 'Revision hinzugefügt', fr: 'Révision ajoutée' },
} satisfies Area;
