import type { Area } from '../translation.ts';

/** What is said of workbooks. */
export const workbook = {
  'The file is no workbook in the format .xlsx. Save the list as .xlsx or as CSV.': {
    de: 'Die Datei ist keine Arbeitsmappe im Format .xlsx. Die Liste als .xlsx oder als CSV speichern.',
    fr: 'Le fichier n’est pas un classeur au format .xlsx. Enregistrer la liste en .xlsx ou en CSV.',
  },
  'The workbook has {found} MB; at most {most} MB is read. Save the sheet with the list as a workbook of its own.': {
    de: 'Die Arbeitsmappe hat {found} MB; gelesen werden höchstens {most} MB. Das Blatt mit der Liste als eigene Arbeitsmappe speichern.',
    fr: 'Le classeur fait {found} Mo ; {most} Mo au plus sont lus. Enregistrer la feuille de la liste dans un classeur à part.',
  },
  'The workbook is in the older format (.xls) or locked by a password. Save it as .xlsx without one.': {
    de: 'Die Arbeitsmappe hat das ältere Format (.xls) oder ist mit einem Passwort geschützt. Als .xlsx ohne Passwort speichern.',
    fr: 'Le classeur est dans l’ancien format (.xls) ou protégé par un mot de passe. L’enregistrer en .xlsx, sans mot de passe.',
  },
  'The workbook becomes larger than {most} MB when it is unpacked, and is not read. Copy the list and paste it, or save it as CSV.': {
    de: 'Die Arbeitsmappe wird beim Entpacken größer als {most} MB und daher nicht gelesen. Die Liste kopieren und einfügen oder als CSV speichern.',
    fr: 'Le classeur dépasse {most} Mo une fois décompressé et n’est pas lu. Copier la liste et la coller, ou l’enregistrer en CSV.',
  },
  'The workbook is damaged: a part of it is cut off or cannot be unpacked. Take another copy of it.': {
    de: 'Die Arbeitsmappe ist beschädigt: Ein Teil fehlt oder lässt sich nicht entpacken. Eine andere Kopie verwenden.',
    fr: 'Le classeur est endommagé : une partie manque ou ne peut pas être décompressée. En prendre une autre copie.',
  },
  'The workbook has no sheet with cells. Choose another file.': {
    de: 'Die Arbeitsmappe hat kein Blatt mit Zellen. Eine andere Datei wählen.',
    fr: 'Le classeur n’a pas de feuille avec des cellules. Choisir un autre fichier.',
  },
  'The workbook holds no schedule. Open a load table as it was written here, save a sheet as CSV, or read a list of counts with Takeoff.': {
    de: 'Die Arbeitsmappe enthält keine Lastaufstellung. Eine Lasttabelle öffnen, wie sie hier geschrieben wurde, ein Blatt als CSV speichern oder eine Mengenliste mit „Mengenauszug“ lesen.',
    fr: 'Le classeur ne contient pas de bilan de charge. Ouvrir un tableau de charge tel qu’il a été écrit ici, enregistrer une feuille en CSV, ou lire une liste de quantités avec « Métré ».',
  },
  'There is no sheet “{sheet}”; the sheets are {sheets}. Name one of them.': {
    de: 'Das Blatt „{sheet}“ gibt es nicht; vorhanden sind: {sheets}. Eines davon angeben.',
    fr: 'La feuille « {sheet} » n’existe pas ; les feuilles présentes sont : {sheets}. Indiquer l’une d’elles.',
  },
  'The sheet reaches over {rows} rows and {columns} columns; at most {most} million cells are read. Delete what stands far from the list, or copy the list and paste it.': {
    de: 'Das Blatt reicht über {rows} Zeilen und {columns} Spalten; gelesen werden höchstens {most} Millionen Zellen. Löschen, was weit von der Liste entfernt steht, oder die Liste kopieren und einfügen.',
    fr: 'La feuille s’étend sur {rows} lignes et {columns} colonnes ; {most} millions de cellules au plus sont lues. Supprimer ce qui se trouve loin de la liste, ou copier la liste et la coller.',
  },
  'The sheet is damaged or incomplete and cannot be read. Save the workbook anew as .xlsx, or copy the list and paste it.': {
    de: 'Das Blatt ist beschädigt oder unvollständig und kann nicht gelesen werden. Die Arbeitsmappe neu als .xlsx speichern oder die Liste kopieren und einfügen.',
    fr: 'La feuille est endommagée ou incomplète et ne peut pas être lue. Enregistrer de nouveau le classeur en .xlsx, ou copier la liste et la coller.',
  },
} satisfies Area;
