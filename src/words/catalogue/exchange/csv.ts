import type { Area } from '../translation.ts';

/** What is said of files and of CSV. */
export const csv = {
  'The file is not text in UTF-8. Save it as UTF-8, as «CSV UTF-8» for example.': {
    de: 'Die Datei ist kein Text in UTF-8. Als UTF-8 speichern, zum Beispiel als „CSV UTF-8“.',
    fr: 'Le fichier n’est pas du texte en UTF-8. L’enregistrer en UTF-8, par exemple comme « CSV UTF-8 ».',
  },
  'The file has {found} MB; at most {most} MB is read. Split it.': {
    de: 'Die Datei hat {found} MB; gelesen werden höchstens {most} MB. Die Datei aufteilen.',
    fr: 'Le fichier fait {found} Mo ; {most} Mo au plus sont lus. Le scinder.',
  },
  'And {count} more of this kind.': {
    de: 'Weitere Hinweise dieser Art: {count}.',
    fr: 'Autres remarques de ce genre : {count}.',
  },
  '“{text}”': { de: '„{text}“', fr: '« {text} »' },
  'The file is empty; its first line must hold headings. Choose another file.': {
    de: 'Die Datei ist leer; ihre erste Zeile muss die Überschriften enthalten. Eine andere Datei wählen.',
    fr: 'Le fichier est vide ; sa première ligne doit porter les intitulés. Choisir un autre fichier.',
  },
  'The file holds NUL characters, as no text file does. Save it as CSV in UTF-8.': {
    de: 'Die Datei enthält NUL-Zeichen, die in keinem Text vorkommen. Als CSV in UTF-8 speichern.',
    fr: 'Le fichier contient des caractères NUL, qu’aucun texte ne contient. L’enregistrer en CSV, en UTF-8.',
  },
  'Line {line}: nothing closes a quote; a quoted text must end with a quote, and quotes in it be doubled. Put the quotes right.': {
    de: 'Zeile {line}: Ein Anführungszeichen wird nicht geschlossen; ein Text in Anführungszeichen muss mit einem enden, und Anführungszeichen darin sind zu verdoppeln. Die Anführungszeichen berichtigen.',
    fr: 'Ligne {line} : un guillemet n’est pas fermé ; un texte entre guillemets doit finir par un guillemet, et les guillemets qu’il contient être doublés. Corriger les guillemets.',
  },
  'Line {line}: text follows a closing quote; a quoted text must end with a quote, and quotes in it be doubled. Put the quotes right.': {
    de: 'Zeile {line}: Nach einem schließenden Anführungszeichen folgt Text; ein Text in Anführungszeichen muss mit einem enden, und Anführungszeichen darin sind zu verdoppeln. Die Anführungszeichen berichtigen.',
    fr: 'Ligne {line} : du texte suit un guillemet fermant ; un texte entre guillemets doit finir par un guillemet, et les guillemets qu’il contient être doublés. Corriger les guillemets.',
  },
  'The headings in the first line fit no sheet. Name the sheet, or give the file the headings of its sheet; those of devices begin with {examples}.': {
    de: 'Die Überschriften der ersten Zeile passen zu keinem Blatt. Das Blatt angeben oder der Datei die Überschriften ihres Blatts geben; die der Geräte beginnen mit {examples}.',
    fr: 'Les intitulés de la première ligne ne correspondent à aucune feuille. Indiquer la feuille, ou donner au fichier les intitulés de sa feuille ; ceux des appareils commencent par {examples}.',
  },
  'The headings fit several sheets: {sheets}. Name the sheet, or add that of its tag.': {
    de: 'Die Überschriften passen zu mehreren Blättern: {sheets}. Das Blatt angeben oder die Überschrift seines Kennzeichens ergänzen.',
    fr: 'Les intitulés correspondent à plusieurs feuilles : {sheets}. Indiquer la feuille, ou ajouter l’intitulé de son repère.',
  },
  'None of the headings is a column of {sheet} that can be filled in. Begin the file with headings such as {examples}.': {
    de: 'Keine der Überschriften gehört zu einer Eingabespalte des Blatts {sheet}. Die Datei mit Überschriften wie {examples} beginnen.',
    fr: 'Aucun intitulé n’est celui d’une colonne de saisie de la feuille {sheet}. Commencer le fichier par des intitulés tels que {examples}.',
  },
  'Columns {first} and {second} are both {column}; each may stand once. Delete one of them or give it another heading.': {
    de: 'Die Spalten {first} und {second} stehen beide für {column}; jede darf nur einmal vorkommen. Eine davon löschen oder ihr eine andere Überschrift geben.',
    fr: 'Les colonnes {first} et {second} désignent toutes deux « {column} » ; chacune ne peut figurer qu’une fois. Supprimer l’une d’elles ou lui donner un autre intitulé.',
  },
  'Column {number}, “{heading}”: the unit {found} cannot be turned into {unit}. Head it {expected} and make the values fit.': {
    de: 'Spalte {number}, „{heading}“: Die Einheit {found} lässt sich nicht in {unit} umrechnen. Als Überschrift {expected} setzen und die Werte anpassen.',
    fr: 'Colonne {number}, « {heading} » : l’unité {found} ne se convertit pas en {unit}. L’intituler {expected} et adapter les valeurs.',
  },
  'Column {number}, “{heading}”: the unit {found} cannot be turned into a plain number. Head it {expected} and make the values fit.': {
    de: 'Spalte {number}, „{heading}“: Die Einheit {found} lässt sich nicht in eine reine Zahl umrechnen. Als Überschrift {expected} setzen und die Werte anpassen.',
    fr: 'Colonne {number}, « {heading} » : l’unité {found} ne se convertit pas en nombre sans unité. L’intituler {expected} et adapter les valeurs.',
  },
  'Line {line} has {fields} fields for {headings} headings. Put a text or number that holds the separator, such as a decimal comma, in quotes.': {
    de: 'Zeile {line} hat {fields} Felder für {headings} Überschriften. Texte und Zahlen, die das Trennzeichen enthalten, etwa ein Dezimalkomma, in Anführungszeichen setzen.',
    fr: 'La ligne {line} a {fields} champs pour {headings} intitulés. Mettre entre guillemets tout texte ou nombre qui contient le séparateur, comme une virgule décimale.',
  },
  'Line {line}, {column}: {sentence}': {
    de: 'Zeile {line}, {column}: {sentence}',
    fr: 'Ligne {line}, {column} : {sentence}',
  },
  'Left out, as the sheet has no such column: {names}.': {
    de: 'Weggelassen, da das Blatt keine solche Spalte hat: {names}.',
    fr: 'Écarté, car la feuille n’a pas de telle colonne : {names}.',
  },
  'Left out, as it has no heading: column {number} with {count, plural, one {# value} other {# values}}.': {
    de: 'Weggelassen, da ohne Überschrift: Spalte {number} mit {count, plural, one {# Wert} other {# Werten}}.',
    fr: 'Écartée, faute d’intitulé : colonne {number}, avec {count, plural, one {# valeur} other {# valeurs}}.',
  },
  '{count, plural, one {One empty line was left out.} other {# empty lines were left out.}}': {
    de: '{count, plural, one {Eine leere Zeile wurde weggelassen.} other {# leere Zeilen wurden weggelassen.}}',
    fr: '{count, plural, one {Une ligne vide a été écartée.} other {# lignes vides ont été écartées.}}',
  },
  'The table has more than {most} rows; no more are read. Split it.': {
    de: 'Die Tabelle hat mehr als {most} Zeilen; mehr werden nicht gelesen. Die Tabelle aufteilen.',
    fr: 'Le tableau a plus de {most} lignes ; les suivantes ne sont pas lues. Le scinder.',
  },
  'Line {line} has more than {most} fields, as no table has. Check what parts the fields, and save the file again.': {
    de: 'Zeile {line} hat mehr als {most} Felder; so viele hat keine Tabelle. Prüfen, was die Felder trennt, und die Datei neu speichern.',
    fr: 'La ligne {line} a plus de {most} champs, ce qu’aucun tableau n’a. Vérifier ce qui sépare les champs et enregistrer de nouveau le fichier.',
  },
} satisfies Area;
