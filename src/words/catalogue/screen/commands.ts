import type { Area } from '../translation.ts';

/** Buttons and what they do. */
export const commands = {
  Undo: { de: 'Rückgängig', fr: 'Annuler' },
  'Takes the last action back, on whichever sheet it was': {
    de: 'Nimmt die letzte Aktion zurück, auf welchem Blatt auch immer',
    fr: 'Annule la dernière action, sur quelque feuille que ce soit',
  },
  Redo: { de: 'Wiederholen', fr: 'Rétablir' },
  'Does again what was taken back': { de: 'Wiederholt, was zurückgenommen wurde', fr: 'Refait ce qui a été annulé' },
  Open: { de: 'Öffnen', fr: 'Ouvrir' },
  'Opens a schedule (.json, or a load table saved as .html or .xlsx), or reads one sheet (.csv)': {
    de: 'Öffnet eine Lastaufstellung (.json oder eine als .html oder .xlsx gespeicherte Lasttabelle) oder liest ein Blatt (.csv)',
    fr: 'Ouvre un bilan de charge (.json, ou un tableau de charge enregistré en .html ou .xlsx), ou lit une feuille (.csv)',
  },
  Save: { de: 'Speichern', fr: 'Enregistrer' },
  'Saves the whole schedule as a file': {
    de: 'Speichert die ganze Lastaufstellung als Datei',
    fr: 'Enregistre tout le bilan de charge dans un fichier',
  },
  'CSV in': { de: 'CSV lesen', fr: 'Lire CSV' },
  'Replaces the rows of this sheet by those of a CSV file': {
    de: 'Ersetzt die Zeilen dieses Blatts durch die einer CSV-Datei',
    fr: 'Remplace les lignes de cette feuille par celles d’un fichier CSV',
  },
  'CSV out': { de: 'CSV schreiben', fr: 'Écrire CSV' },
  'Saves this sheet as a CSV file': {
    de: 'Speichert dieses Blatt als CSV-Datei',
    fr: 'Enregistre cette feuille dans un fichier CSV',
  },
  Takeoff: { de: 'Mengenauszug', fr: 'Métré' },
  'Reads a list of counts measured off drawings': {
    de: 'Liest eine Mengenliste nach Plänen',
    fr: 'Lit une liste de quantités relevées sur plans',
  },
  'Share out': { de: 'Aufteilen', fr: 'Répartir' },
  'Shares the devices out over bus branches or supplies': {
    de: 'Teilt die Geräte auf Buslinien oder Versorgungen auf',
    fr: 'Répartit les appareils sur les lignes de bus ou les alimentations',
  },
  Sizing: { de: 'Auslegung', fr: 'Dimensionner' },
  'Counts the supplies, branches and relay modules that the job needs': {
    de: 'Ermittelt, wie viele Versorgungen, Buslinien und Relaismodule nötig sind',
    fr: 'Compte les alimentations, lignes de bus et modules à relais nécessaires',
  },
  'Load table': { de: 'Lasttabelle', fr: 'Tableau de charge' },
  'Shows what is handed over, prints and saves it; revisions, and changes since an older schedule': {
    de: 'Zeigt, druckt und speichert, was übergeben wird; Revisionen und Änderungen gegenüber einer älteren Lastaufstellung',
    fr: 'Affiche, imprime et enregistre ce qui est remis\u202f; révisions, et modifications depuis un bilan antérieur',
  },
  'Insert above': { de: 'Zeile darüber', fr: 'Insérer avant' },
  'Inserts a row above the selected one': {
    de: 'Fügt über der gewählten eine Zeile ein',
    fr: 'Insère une ligne au-dessus de celle qui est sélectionnée',
  },
  'Insert below': { de: 'Zeile darunter', fr: 'Insérer après' },
  'Inserts a row below the selected one': {
    de: 'Fügt unter der gewählten eine Zeile ein',
    fr: 'Insère une ligne en dessous de celle qui est sélectionnée',
  },
  'Delete rows': { de: 'Löschen', fr: 'Supprimer' },
  'Deletes the selected rows': { de: 'Löscht die gewählten Zeilen', fr: 'Supprime les lignes sélectionnées' },
  'Move up': { de: 'Nach oben', fr: 'Monter' },
  'Moves the selected rows up': {
    de: 'Verschiebt die gewählten Zeilen nach oben',
    fr: 'Déplace les lignes sélectionnées vers le haut',
  },
  'Move down': { de: 'Nach unten', fr: 'Descendre' },
  'Moves the selected rows down': {
    de: 'Verschiebt die gewählten Zeilen nach unten',
    fr: 'Déplace les lignes sélectionnées vers le bas',
  },
  'Fill down': { de: 'Nach unten ausfüllen', fr: 'Recopier vers le bas' },
  'Fills the selected cells with what the uppermost ones hold': {
    de: 'Füllt die gewählten Zellen mit dem Inhalt der obersten',
    fr: 'Remplit les cellules sélectionnées avec le contenu des plus hautes',
  },
  '{help} ({keys})': { de: '{help} ({keys})', fr: '{help} ({keys})' },
  '{title}: {about} ({keys})': { de: '{title}: {about} ({keys})', fr: '{title}\u00a0: {about} ({keys})' },
  'Tools of the schedule': { de: 'Werkzeuge der Lastaufstellung', fr: 'Outils du bilan de charge' },
  'Tools of the sheet {sheet}': { de: 'Werkzeuge des Blatts {sheet}', fr: 'Outils de la feuille {sheet}' },
  Rows: { de: 'Zeilen', fr: 'Lignes' },
  'CSV of this sheet': { de: 'CSV dieses Blatts', fr: 'CSV de cette feuille' },
  'Show the devices': { de: 'Anordnung der Geräte', fr: 'Ordre des appareils' },
  'As entered': { de: 'Wie erfasst', fr: 'Comme saisi' },
  'Per rail': { de: 'Je Schiene', fr: 'Par rail' },
  'Per branch': { de: 'Je Buslinie', fr: 'Par ligne de bus' },
  'Keep the rows from before too': {
    de: 'Auch die bisherigen Zeilen behalten',
    fr: 'Garder aussi les lignes précédentes',
  },
  'Load the demo': { de: 'Beispiel laden', fr: 'Charger l’exemple' },
  'Open a file': { de: 'Datei öffnen', fr: 'Ouvrir un fichier' },
  'Read a takeoff': { de: 'Mengenauszug lesen', fr: 'Lire un métré' },
} satisfies Area;
