import type { Area } from '../translation.ts';

/** What is said of schedule files. */
export const json = {
  'There is a word that JSON does not know; texts stand in double quotes.': {
    de: 'Hier steht ein Wort, das JSON nicht kennt; Texte stehen in doppelten Anführungszeichen.',
    fr: 'Il y a un mot que JSON ne connaît pas ; les textes se mettent entre guillemets droits doubles.',
  },
  'There is a number that JSON does not know; write it as 12.5.': {
    de: 'Hier steht eine Zahl, die JSON nicht kennt; sie als 12.5 schreiben.',
    fr: 'Il y a un nombre que JSON ne connaît pas ; l’écrire comme 12.5.',
  },
  'There is no key where one is expected; keys stand in double quotes, and no comma behind the last one.': {
    de: 'Hier fehlt ein Schlüssel; Schlüssel stehen in doppelten Anführungszeichen, und hinter dem letzten Eintrag steht kein Komma.',
    fr: 'Il manque une clé ; les clés se mettent entre guillemets droits doubles, sans virgule après la dernière.',
  },
  'There is no value where one is expected; write one, and no comma after the last one.': {
    de: 'Hier fehlt ein Wert; einen ergänzen, und kein Komma nach dem letzten setzen.',
    fr: 'Il manque une valeur ; en ajouter une, sans virgule après la dernière.',
  },
  'There is no colon between key and value; write one.': {
    de: 'Zwischen Schlüssel und Wert fehlt ein Doppelpunkt; ihn ergänzen.',
    fr: 'Il manque un deux-points entre la clé et la valeur ; l’ajouter.',
  },
  'There is no comma between two values; write one.': {
    de: 'Zwischen zwei Werten fehlt ein Komma; es ergänzen.',
    fr: 'Il manque une virgule entre deux valeurs ; l’ajouter.',
  },
  'There is no closing brace; the file may be cut short.': {
    de: 'Es fehlt eine schließende geschweifte Klammer; die Datei ist vielleicht abgeschnitten.',
    fr: 'Il manque une accolade fermante ; le fichier est peut-être tronqué.',
  },
  'There is no closing bracket; the file may be cut short.': {
    de: 'Es fehlt eine schließende eckige Klammer; die Datei ist vielleicht abgeschnitten.',
    fr: 'Il manque un crochet fermant ; le fichier est peut-être tronqué.',
  },
  'There is more text after the end of the schedule; delete it.': {
    de: 'Nach dem Ende der Lastaufstellung folgt noch Text; ihn löschen.',
    fr: 'Du texte suit la fin du bilan de charge ; le supprimer.',
  },
  'There is a comment, which JSON does not allow; delete it.': {
    de: 'Hier steht ein Kommentar, den JSON nicht zulässt; ihn löschen.',
    fr: 'Il y a un commentaire, que JSON n’admet pas ; le supprimer.',
  },
  'There is a text without its closing quote; write it on the same line.': {
    de: 'Einem Text fehlt das schließende Anführungszeichen; es in derselben Zeile ergänzen.',
    fr: 'Il manque le guillemet fermant d’un texte ; l’ajouter sur la même ligne.',
  },
  'There is a number that breaks off; complete it.': {
    de: 'Eine Zahl bricht ab; sie vervollständigen.',
    fr: 'Un nombre s’interrompt ; le compléter.',
  },
  'There is a character code that is not one; write \\u and four digits.': {
    de: 'Hier steht ein Zeichencode, der keiner ist; \\u und vier Ziffern schreiben.',
    fr: 'Il y a un code de caractère qui n’en est pas un ; écrire \\u et quatre chiffres.',
  },
  'There is a backslash before a character that needs none; write two backslashes for one.': {
    de: 'Vor einem Zeichen steht ein Backslash, den es nicht braucht; für einen Backslash zwei schreiben.',
    fr: 'Une barre oblique inverse précède un caractère qui n’en demande pas ; en écrire deux pour une.',
  },
  'There is a control character inside a text; write \\n for a line break, \\t for a tab.': {
    de: 'In einem Text steht ein Steuerzeichen; \\n für einen Zeilenumbruch, \\t für einen Tabulator schreiben.',
    fr: 'Un texte contient un caractère de contrôle ; écrire \\n pour un saut de ligne, \\t pour une tabulation.',
  },
  'There is something that is not JSON; put it right.': {
    de: 'Hier steht etwas, das kein JSON ist; es berichtigen.',
    fr: 'Il y a quelque chose qui n’est pas du JSON ; le corriger.',
  },
  'The file is not JSON: {fault}. Put that right.': {
    de: 'Die Datei ist kein JSON: {fault}. Das berichtigen.',
    fr: 'Le fichier n’est pas du JSON : {fault}. Corriger cela.',
  },
  'The file nests brackets more than {most} deep; a schedule needs 5. Check what made it.': {
    de: 'Die Klammern der Datei sind mehr als {most} Ebenen tief verschachtelt; eine Lastaufstellung braucht 5. Prüfen, womit die Datei erzeugt wurde.',
    fr: 'Le fichier imbrique des crochets sur plus de {most} niveaux ; un bilan de charge en demande 5. Vérifier ce qui l’a produit.',
  },
  'The key “{key}” stands twice in one object; each may stand once. Delete one of them.': {
    de: 'Der Schlüssel „{key}“ kommt in einem Objekt zweimal vor; jeder darf nur einmal vorkommen. Einen davon löschen.',
    fr: 'La clé « {key} » figure deux fois dans un objet ; chacune ne peut figurer qu’une fois. Supprimer l’une d’elles.',
  },
  'The page holds no schedule. Open a schedule file, or a load table in HTML as it was written here.': {
    de: 'Die Seite enthält keine Lastaufstellung. Die Datei einer Lastaufstellung öffnen oder eine Lasttabelle in HTML, wie sie hier geschrieben wurde.',
    fr: 'La page ne contient pas de bilan de charge. Ouvrir un fichier de bilan de charge, ou un tableau de charge en HTML tel qu’il a été écrit ici.',
  },
  'The file is JSON but not a schedule: its "format" must be "{format}". Open a schedule file.': {
    de: 'Die Datei ist JSON, aber keine Lastaufstellung: Ihr "format" muss "{format}" sein. Die Datei einer Lastaufstellung öffnen.',
    fr: 'Le fichier est du JSON mais pas un bilan de charge : son "format" doit être "{format}". Ouvrir un fichier de bilan de charge.',
  },
  'The file does not say its version. If it was written by hand, add "version": {version}.': {
    de: 'Die Datei gibt ihre Version nicht an. Wurde sie von Hand geschrieben, "version": {version} ergänzen.',
    fr: 'Le fichier n’indique pas sa version. S’il a été écrit à la main, ajouter "version": {version}.',
  },
  'The file has the version {found}; versions 1 to {version} can be read here. Open it with newer software.': {
    de: 'Die Datei hat die Version {found}; hier lassen sich die Versionen 1 bis {version} lesen. Die Datei mit neuerer Software öffnen.',
    fr: 'Le fichier est en version {found} ; les versions 1 à {version} peuvent être lues ici. L’ouvrir avec un logiciel plus récent.',
  },
  'The file has the version {found}; versions 1 to {version} can be read here. Write "version": {version}.': {
    de: 'Die Datei hat die Version {found}; hier lassen sich die Versionen 1 bis {version} lesen. "version": {version} schreiben.',
    fr: 'Le fichier est en version {found} ; les versions 1 à {version} peuvent être lues ici. Écrire "version": {version}.',
  },
  'The file has no “sheets”: it must be an object': {
    de: 'In der Datei fehlt „sheets“: Es muss ein Objekt sein',
    fr: 'Le fichier n’a pas de « sheets » : ce doit être un objet',
  },
  "{name} must be an object: '{…}'": {
    de: "{name} muss ein Objekt sein: '{…}'",
    fr: "{name} doit être un objet : '{…}'",
  },
  '{name} must be a list: […]': { de: '{name} muss eine Liste sein: […]', fr: '{name} doit être une liste : […]' },
  '{name}: “{key}” must be a text': {
    de: '{name}: „{key}“ muss ein Text sein',
    fr: '{name} : « {key} » doit être un texte',
  },
  '{name}: “{key}” must be a single value': {
    de: '{name}: „{key}“ muss ein einzelner Wert sein',
    fr: '{name} : « {key} » doit être une valeur unique',
  },
  'The detail “{key}” must be a text': {
    de: 'Die Angabe „{key}“ muss ein Text sein',
    fr: 'La donnée « {key} » doit être un texte',
  },
  'a single value is allowed': { de: 'Zulässig ist ein einzelner Wert', fr: 'une seule valeur est admise' },
  '{must}; it is {found}. Put that right.': {
    de: '{must}; vorhanden ist: {found}. Das berichtigen.',
    fr: '{must} ; trouvé : {found}. Corriger cela.',
  },
  null: { de: 'null', fr: 'null' },
  'a list': { de: 'eine Liste', fr: 'une liste' },
  'an object': { de: 'ein Objekt', fr: 'un objet' },
  'a text': { de: 'ein Text', fr: 'un texte' },
  'true or false': { de: 'true oder false', fr: 'true ou false' },
  'Accepted finding {number}': { de: 'Akzeptierter Befund {number}', fr: 'Constat accepté {number}' },
  'Revision {number}': { de: 'Revision {number}', fr: 'Révision {number}' },
  'The sheet “{sheet}”': { de: 'Das Blatt „{sheet}“', fr: 'La feuille « {sheet} »' },
  '{sheet}, row {row}:': { de: '{sheet}, Zeile {row}:', fr: '{sheet}, ligne {row} :' },
  '{sheet}, row {row}, {column}: {sentence}': {
    de: '{sheet}, Zeile {row}, {column}: {sentence}',
    fr: '{sheet}, ligne {row}, {column} : {sentence}',
  },
  '{name}: there is no sheet “{sheet}”; there are {sheets}. Write one of these.': {
    de: '{name}: Das Blatt „{sheet}“ gibt es nicht; es gibt {sheets}. Eines davon angeben.',
    fr: '{name} : la feuille « {sheet} » n’existe pas ; il y a {sheets}. Indiquer l’une d’elles.',
  },
  '“{name}” has the unknown key “{key}”; it is kept and written back.': {
    de: '„{name}“ hat den unbekannten Schlüssel „{key}“; er bleibt erhalten und wird wieder geschrieben.',
    fr: '« {name} » a la clé inconnue « {key} » ; elle est conservée et réécrite.',
  },
  'The file has the unknown key “{key}”; it is kept and written back.': {
    de: 'Die Datei hat den unbekannten Schlüssel „{key}“; er bleibt erhalten und wird wieder geschrieben.',
    fr: 'Le fichier a la clé inconnue « {key} » ; elle est conservée et réécrite.',
  },
  'The file has the unknown sheet “{sheet}”; it is kept and written back.': {
    de: 'Die Datei hat das unbekannte Blatt „{sheet}“; es bleibt erhalten und wird wieder geschrieben.',
    fr: 'Le fichier a la feuille inconnue « {sheet} » ; elle est conservée et réécrite.',
  },
  'The sheet “{sheet}” has the unknown key “{key}”; it is kept and written back.': {
    de: 'Das Blatt „{sheet}“ hat den unbekannten Schlüssel „{key}“; er bleibt erhalten und wird wieder geschrieben.',
    fr: 'La feuille « {sheet} » a la clé inconnue « {key} » ; elle est conservée et réécrite.',
  },
  '{name} has {count} rows; at most {most} are read. Split it.': {
    de: '{name} hat {count} Zeilen; höchstens {most} werden gelesen. Die Zeilen auf mehrere Dateien aufteilen.',
    fr: '{name} a {count} lignes ; {most} au plus sont lues. Répartir les lignes sur plusieurs fichiers.',
  },
} satisfies Area;
