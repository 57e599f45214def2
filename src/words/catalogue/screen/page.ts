import type { Area } from '../translation.ts';

/** What stands around the sheets, and what is told of files. */
export const page = {
  'Details of the schedule': { de: 'Angaben zur Lastaufstellung', fr: 'Données du bilan de charge' },
  'YYYY-MM-DD': { de: 'JJJJ-MM-TT', fr: 'AAAA-MM-JJ' },
  '{title} changed': { de: '{title} geändert', fr: 'Modification\u00a0: {title}' },
  Sheets: { de: 'Blätter', fr: 'Feuilles' },
  Overview: { de: 'Übersicht', fr: 'Synthèse' },
  'Loadings and findings': { de: 'Auslastungen und Befunde', fr: 'Taux de charge et constats' },
  Cautions: { de: 'Sicherheitshinweise', fr: 'Précautions' },
  'File to open': { de: 'Zu öffnende Datei', fr: 'Fichier à ouvrir' },
  'Drop a takeoff (.xlsx, .csv, .tsv)': {
    de: 'Mengenauszug hier ablegen (.xlsx, .csv, .tsv)',
    fr: 'Déposer un métré (.xlsx, .csv, .tsv)',
  },
  'Drop the older schedule (.json, .html, .xlsx)': {
    de: 'Ältere Lastaufstellung hier ablegen (.json, .html, .xlsx)',
    fr: 'Déposer le bilan antérieur (.json, .html, .xlsx)',
  },
  'Drop a schedule (.json, or a load table .html, .xlsx) or one sheet (.csv)': {
    de: 'Lastaufstellung (.json oder Lasttabelle .html, .xlsx) oder ein Blatt (.csv) hier ablegen',
    fr: 'Déposer un bilan de charge (.json, ou un tableau de charge .html, .xlsx) ou une feuille (.csv)',
  },
  'Reading {file} …': { de: '{file} wird gelesen …', fr: 'Lecture de {file} …' },
  'This part could not be fetched. Check the connection, then try again.': {
    de: 'Dieser Teil konnte nicht geladen werden. Die Verbindung prüfen und erneut versuchen.',
    fr: 'Cette partie n’a pas pu être chargée. Vérifier la connexion et réessayer.',
  },
  '{sheet}: no rows yet': { de: '{sheet}: noch keine Zeilen', fr: '{sheet}\u00a0: pas encore de lignes' },
  'Type in the first line, paste rows from a spreadsheet with Ctrl+V, or drop a file here.': {
    de: 'In die erste Zeile tippen, mit Strg+V Zeilen aus einer Tabellenkalkulation einfügen oder eine Datei hier ablegen.',
    fr: 'Saisir dans la première ligne, coller des lignes d’un tableur avec Ctrl+V, ou déposer un fichier ici.',
  },
  'The rows need a key': {
    de: 'Die Zeilen brauchen einen Lizenzschlüssel',
    fr: 'Les lignes demandent une clé de licence',
  },
  'The rows of a schedule are shown in Handsontable, a grid that comes under a licence of its own. Give its key in the attribute {attribute}: the one that was bought with a licence or, free of charge and only for evaluation and non-commercial use, {key}. Its licence page says which of them applies.': {
    de: 'Die Zeilen einer Lastaufstellung werden in Handsontable angezeigt, einem Tabellenraster mit eigener Lizenz. Dessen Schlüssel im Attribut {attribute} angeben: den mit einer Lizenz erworbenen oder, kostenlos und nur zur Erprobung und nichtkommerziellen Nutzung, {key}. Welcher gilt, sagt die Lizenzseite des Rasters.',
    fr: 'Les lignes d’un bilan de charge sont affichées par Handsontable, une grille soumise à sa propre licence. Donner sa clé dans l’attribut {attribute}\u00a0: celle acquise avec une licence ou, gratuitement et uniquement pour l’évaluation et l’usage non commercial, {key}. La page de licence de la grille dit laquelle s’applique.',
  },
  'Everything else works without it: open and save files, read the loadings and the findings.': {
    de: 'Alles andere geht auch ohne: Dateien öffnen und speichern, Auslastungen und Befunde lesen.',
    fr: 'Tout le reste fonctionne sans elle\u00a0: ouvrir et enregistrer des fichiers, lire les taux de charge et les constats.',
  },
  'The rows cannot be shown: the grid could not be fetched. Reload the page.': {
    de: 'Die Zeilen lassen sich nicht anzeigen: Das Tabellenraster konnte nicht geladen werden. Die Seite neu laden.',
    fr: 'Les lignes ne peuvent pas être affichées\u00a0: la grille n’a pas pu être chargée. Recharger la page.',
  },
  '{file} was not read because of {total} problems, of which the first {listed} are listed. The schedule is as it was.': {
    de: '{file} wurde wegen {total} Problemen nicht gelesen, die ersten {listed} sind aufgeführt. Die Lastaufstellung ist unverändert.',
    fr: '{file} n’a pas été lu à cause de {total} problèmes, dont les {listed} premiers sont affichés. Le bilan de charge est inchangé.',
  },
  '{file} was not read because of {total, plural, one {a problem} other {# problems}}. The schedule is as it was.': {
    de: '{file} wurde wegen {total, plural, one {eines Problems} other {# Problemen}} nicht gelesen. Die Lastaufstellung ist unverändert.',
    fr: '{file} n’a pas été lu à cause {total, plural, one {d’un problème} other {de # problèmes}}. Le bilan de charge est inchangé.',
  },
  'What was refused': { de: 'Was nicht angenommen wurde', fr: 'Ce qui a été refusé' },
  Dismiss: { de: 'Ausblenden', fr: 'Masquer' },
  'Dismiss the problems': { de: 'Probleme ausblenden', fr: 'Masquer les problèmes' },
  Problems: { de: 'Probleme', fr: 'Problèmes' },
  'Line {line}': { de: 'Zeile {line}', fr: 'Ligne {line}' },
  'Line {line}:': { de: 'Zeile {line}:', fr: 'Ligne {line}\u00a0:' },
  'Line {line}, column {column}:': {
    de: 'Zeile {line}, Spalte {column}:',
    fr: 'Ligne {line}, colonne {column}\u00a0:',
  },
} satisfies Area;
