import type { Area } from '../translation.ts';

/** What stands in the place where a takeoff is read. */
export const takeoffReader = {
  'A list of counts measured off drawings becomes device rows; every line is accounted for.': {
    de: 'Eine Mengenliste nach Plänen wird zu Gerätezeilen; keine Zeile geht verloren.',
    fr: 'Une liste de quantités relevées sur plans devient des lignes d’appareils ; aucune ligne n’est perdue.',
  },
  'Paste the list here': { de: 'Die Liste hier einfügen', fr: 'Coller la liste ici' },
  'Item\tDescription\tRoom\tQty': { de: 'Pos\tBezeichnung\tRaum\tMenge', fr: 'Repère\tDésignation\tLocal\tQté' },
  'Read what is typed': { de: 'Eingabe lesen', fr: 'Lire le texte saisi' },
  'or drop a file.': { de: 'oder eine Datei hier ablegen.', fr: 'ou déposer un fichier ici.' },
  'A workbook (.xlsx), cells copied from a spreadsheet, or CSV with comma, semicolon or tab. Columns may stand in any order, under headings in English, German or French, or none; titles, subtotals and quantities such as “12 no.” or “1 200” are understood.': {
    de: 'Eine Arbeitsmappe (.xlsx), aus einer Tabellenkalkulation kopierte Zellen oder CSV mit Komma, Semikolon oder Tabulator. Die Spalten dürfen in beliebiger Reihenfolge stehen, mit deutschen, englischen, französischen oder ohne Überschriften; Titel, Zwischensummen und Mengen wie „12 Stk.“ oder „1 200“ werden verstanden.',
    fr: 'Un classeur (.xlsx), des cellules copiées d’un tableur, ou du CSV avec virgule, point-virgule ou tabulation. Les colonnes peuvent être dans n’importe quel ordre, avec des intitulés en français, anglais ou allemand, ou sans intitulés ; les titres, sous-totaux et quantités comme « 12 u » ou « 1 200 » sont compris.',
  },
  'Sheet of the workbook': { de: 'Blatt der Arbeitsmappe', fr: 'Feuille du classeur' },
  'The pasted list': { de: 'Die eingefügte Liste', fr: 'La liste collée' },
  'The typed list': { de: 'Die eingegebene Liste', fr: 'La liste saisie' },
  '{name} was not read. Nothing changed.': {
    de: '{name}: nicht gelesen. Nichts wurde geändert.',
    fr: '{name} : lecture impossible. Rien n’a été modifié.',
  },
  'The sheet of types is empty, so that every name becomes a new type without a draw.': {
    de: 'Das Blatt „Gerätetypen“ ist leer; jeder Name wird daher ein neuer Typ ohne Stromaufnahme.',
    fr: 'La feuille « Types d’appareil » est vide ; chaque nom devient donc un nouveau type sans courant absorbé.',
  },
  'Add general device types': { de: 'Allgemeine Gerätetypen hinzufügen', fr: 'Ajouter les types d’appareil généraux' },
  'General device types: {count, plural, one {# row} other {# rows}}': {
    de: 'Allgemeine Gerätetypen: {count, plural, one {# Zeile} other {# Zeilen}}',
    fr: 'Types d’appareil généraux : {count, plural, one {# ligne} other {# lignes}}',
  },
  'Names that are no type yet': { de: 'Namen, die noch kein Typ sind', fr: 'Noms qui ne sont pas encore un type' },
  '{count, plural, one {# name} other {# names}} to decide': {
    de: '{count, plural, one {# Name} other {# Namen}} zu entscheiden',
    fr: '{count, plural, one {# nom} other {# noms}} à décider',
  },
  'What you choose is kept as an alias of the type, so that it is asked once.': {
    de: 'Die Wahl wird unter den anderen Namen des Typs gespeichert, damit nur einmal gefragt wird.',
    fr: 'Le choix est conservé parmi les autres noms du type, afin que la question ne soit posée qu’une fois.',
  },
  'Take the likest type for the {count} that are {likeness} alike or more': {
    de: 'Den ähnlichsten Typ nehmen, wo die Ähnlichkeit mindestens {likeness} ist: {count}',
    fr: 'Prendre le type le plus proche là où la ressemblance atteint {likeness} : {count}',
  },
  '{qty} on {lines, plural, one {# line} other {# lines}}': {
    de: '{qty} in {lines, plural, one {# Zeile} other {# Zeilen}}',
    fr: '{qty} sur {lines, plural, one {# ligne} other {# lignes}}',
  },
  'What {name} is': { de: 'Was {name} ist', fr: 'Ce qu’est {name}' },
  'to be decided': { de: 'noch zu entscheiden', fr: 'à décider' },
  'Like it': { de: 'Ähnlich', fr: 'Ressemblants' },
  '{type} (likeness {likeness})': { de: '{type} (Ähnlichkeit {likeness})', fr: '{type} (ressemblance {likeness})' },
  'a new type, without a draw yet': {
    de: 'ein neuer Typ, noch ohne Stromaufnahme',
    fr: 'un nouveau type, encore sans courant absorbé',
  },
  'nothing to be counted': { de: 'nichts, was gezählt wird', fr: 'rien qui se compte' },
  'Other types': { de: 'Andere Typen', fr: 'Autres types' },
  'Yes, {type}': { de: 'Ja, {type}', fr: 'Oui, {type}' },
  'Lines that are shown': { de: 'Angezeigte Zeilen', fr: 'Lignes affichées' },
  'all lines': { de: 'alle Zeilen', fr: 'toutes les lignes' },
  'to decide': { de: 'zu entscheiden', fr: 'à décider' },
  taken: { de: 'übernommen', fr: 'retenue' },
  merged: { de: 'zusammengefasst', fr: 'regroupée' },
  'left out': { de: 'weggelassen', fr: 'écartée' },
  'Lines of the takeoff': { de: 'Zeilen des Mengenauszugs', fr: 'Lignes du métré' },
  Line: { de: 'Zeile', fr: 'Ligne' },
  'What becomes of it': { de: 'Was daraus wird', fr: 'Ce qu’elle devient' },
  'Column {number}': { de: 'Spalte {number}', fr: 'Colonne {number}' },
  'What {name} holds': { de: 'Was {name} enthält', fr: 'Ce que contient {name}' },
  '{count, plural, one {# value} other {# values}}': {
    de: '{count, plural, one {# Wert} other {# Werte}}',
    fr: '{count, plural, one {# valeur} other {# valeurs}}',
  },
  'as before': { de: 'wie zuvor', fr: 'comme la fois précédente' },
  'by its heading': { de: 'nach der Überschrift', fr: 'd’après son intitulé' },
  'by its values': { de: 'nach den Werten', fr: 'd’après ses valeurs' },
  'not read': { de: 'nicht gelesen', fr: 'non lue' },
  Unit: { de: 'Einheit', fr: 'Unité' },
  'Count it': { de: 'Zählen', fr: 'Compter' },
  'Leave it out': { de: 'Weglassen', fr: 'Écarter' },
  'Decide anew': { de: 'Neu entscheiden', fr: 'Revoir la décision' },
  'Show all {count} lines': { de: 'Alle {count} Zeilen anzeigen', fr: 'Afficher les {count} lignes' },
  'There is no such line.': { de: 'Keine solche Zeile.', fr: 'Aucune ligne de ce genre.' },
  'Nothing is taken before you have seen every line.': {
    de: 'Nichts wird übernommen, bevor jede Zeile zu sehen war.',
    fr: 'Rien n’est retenu avant que chaque ligne ait été vue.',
  },
  'Another list': { de: 'Andere Liste', fr: 'Une autre liste' },
  'Leave out {count, plural, one {# undecided line} other {# undecided lines}}': {
    de: '{count, plural, one {# offene Zeile} other {# offene Zeilen}} weglassen',
    fr: 'Écarter {count, plural, one {# ligne à décider} other {# lignes à décider}}',
  },
  'Decide on what is open first': {
    de: 'Erst entscheiden, was offen ist',
    fr: 'Décider d’abord de ce qui reste ouvert',
  },
  'One action, which Undo takes back': {
    de: 'Eine Aktion, die „Rückgängig“ zurücknimmt',
    fr: 'Une seule action, que « Annuler » défait',
  },
  '{count, plural, one {# line} other {# lines}} to decide first': {
    de: 'Erst {count, plural, one {# Zeile} other {# Zeilen}} entscheiden',
    fr: '{count, plural, one {# ligne} other {# lignes}} à décider d’abord',
  },
  'Take {devices, plural, one {# device} other {# devices}} in {rows, plural, one {# row} other {# rows}}': {
    de: '{devices, plural, one {# Gerät} other {# Geräte}} in {rows, plural, one {# Zeile} other {# Zeilen}} übernehmen',
    fr: 'Reprendre {devices, plural, one {# appareil} other {# appareils}} en {rows, plural, one {# ligne} other {# lignes}}',
  },
} satisfies Area;
