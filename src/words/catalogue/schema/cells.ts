import type { Area } from '../translation.ts';

/** What is said of a text that was entered in a cell. */
export const cells = {
  '{first} or {last}': { de: '{first} oder {last}', fr: '{first} ou {last}' },
  '{least} or more': { de: 'mindestens {least}', fr: 'au moins {least}' },
  '{least} to {most}': { de: '{least} bis {most}', fr: 'de {least} à {most}' },
  'more than {limit}': { de: 'mehr als {limit}', fr: 'plus de {limit}' },
  'more than {limit} and at most {most}': {
    de: 'mehr als {limit} und höchstens {most}',
    fr: 'plus de {limit} et au plus {most}',
  },
  'at most {most}': { de: 'höchstens {most}', fr: 'au plus {most}' },
  'yes or no': { de: 'ja oder nein', fr: 'oui ou non' },
  'any text': { de: 'beliebiger Text', fr: 'tout texte' },
  'the tag of a row': { de: 'das Kennzeichen einer Zeile', fr: 'le repère d’une ligne' },
  'a whole number': { de: 'eine ganze Zahl', fr: 'un nombre entier' },
  'a number': { de: 'eine Zahl', fr: 'un nombre' },
  'a share or a percentage': { de: 'ein Anteil oder ein Prozentwert', fr: 'une fraction ou un pourcentage' },
  '“{found}” is not a whole number; {allowed} is allowed. Type {below} or {above}.': {
    de: '„{found}“ ist keine ganze Zahl; erlaubt: {allowed}. {below} oder {above} eingeben.',
    fr: '« {found} » n’est pas un nombre entier ; valeur permise : {allowed}. Saisir {below} ou {above}.',
  },
  '“{found}” is too large; at most {most} is allowed. Type a smaller number.': {
    de: '„{found}“ ist zu groß; erlaubt: höchstens {most}. Eine kleinere Zahl eingeben.',
    fr: '« {found} » est trop grand ; valeur permise : au plus {most}. Saisir un nombre plus petit.',
  },
  '“{found}” is out of range; {range} is allowed. Type such a value, or empty the cell.': {
    de: '„{found}“ liegt außerhalb des Bereichs; erlaubt: {range}. Einen solchen Wert eingeben oder die Zelle leeren.',
    fr: '« {found} » est hors limites ; valeur permise : {range}. Saisir une telle valeur ou vider la cellule.',
  },
  '“{found}” cannot stand here; {allowed} is allowed. Type that, or empty the cell.': {
    de: '„{found}“ kann hier nicht stehen; erlaubt: {allowed}. Einen solchen Wert eingeben oder die Zelle leeren.',
    fr: '« {found} » ne peut pas figurer ici ; valeur permise : {allowed}. Saisir une telle valeur ou vider la cellule.',
  },
  'The text holds a NUL character, which no text may hold. Delete it and enter the text again.': {
    de: 'Der Text enthält ein NUL-Zeichen, das in keinem Text stehen darf. Das Zeichen löschen und den Text neu eingeben.',
    fr: 'Le texte contient un caractère NUL, interdit dans tout texte. Supprimer ce caractère et saisir le texte de nouveau.',
  },
  '“{found}” is not in the list; {allowed} are allowed. Type one of these, or nothing.': {
    de: '„{found}“ steht nicht in der Liste; erlaubt: {allowed}. Einen dieser Werte eingeben oder nichts.',
    fr: '« {found} » n’est pas dans la liste ; valeurs permises : {allowed}. Saisir l’une d’elles ou rien.',
  },
  '“{found}” is more than 100 %; {range} (at most 100 %) is allowed. Type a smaller share.': {
    de: '„{found}“ ist mehr als 100 %; erlaubt: {range} (höchstens 100 %). Einen kleineren Anteil eingeben.',
    fr: '« {found} » dépasse 100 % ; valeur permise : {range} (au plus 100 %). Saisir une fraction plus petite.',
  },
  '“{found}” is more than 1; {range} (at most 100 %) is allowed: diversity is the share expected at the same time.': {
    de: '„{found}“ ist mehr als 1; erlaubt: {range} (höchstens 100 %). Der Gleichzeitigkeitsfaktor ist der gleichzeitig zu erwartende Anteil.',
    fr: '« {found} » dépasse 1 ; valeur permise : {range} (au plus 100 %). Le facteur de simultanéité est la part attendue en même temps.',
  },
  'Some texts print its reciprocal: if yours does, type {reciprocal}.': {
    de: 'Manche Unterlagen nennen den Kehrwert: in diesem Fall {reciprocal} eingeben.',
    fr: 'Certains documents donnent son inverse : dans ce cas, saisir {reciprocal}.',
  },
  '“{found}” is more than 1; {range} (at most 100 %) is allowed. Type 80 % or {share}, for instance.': {
    de: '„{found}“ ist mehr als 1; erlaubt: {range} (höchstens 100 %). Zum Beispiel 80 % oder {share} eingeben.',
    fr: '« {found} » dépasse 1 ; valeur permise : {range} (au plus 100 %). Saisir par exemple 80 % ou {share}.',
  },
  '“{found}” is more than 1; {range} (at most 100 %) is allowed. Type {value} % or {share} if {value} in a hundred is meant.': {
    de: '„{found}“ ist mehr als 1; erlaubt: {range} (höchstens 100 %). {value} % oder {share} eingeben, wenn {value} von hundert gemeint ist.',
    fr: '« {found} » dépasse 1 ; valeur permise : {range} (au plus 100 %). Saisir {value} % ou {share} s’il s’agit de {value} pour cent.',
  },
  '“{found}” is neither yes nor no, which alone are allowed. Type yes or no, or empty the cell.': {
    de: '„{found}“ ist weder ja noch nein; nur diese sind erlaubt. Ja oder nein eingeben oder die Zelle leeren.',
    fr: '« {found} » n’est ni oui ni non, seules valeurs permises. Saisir oui ou non, ou vider la cellule.',
  },
  '{title} {value} for {name}: {source}': {
    de: '{title} {value} für {name}: {source}',
    fr: '{title} {value} pour {name} : {source}',
  },
  '“{found}” is not a number; {allowed} is allowed. Type digits, or nothing.': {
    de: '„{found}“ ist keine Zahl; erlaubt: {allowed}. Ziffern eingeben oder nichts.',
    fr: '« {found} » n’est pas un nombre ; valeur permise : {allowed}. Saisir des chiffres ou rien.',
  },
  '“{found}” can mean {readings}; a number with one meaning is allowed. Type {readings}.': {
    de: '„{found}“ kann {readings} bedeuten; erlaubt: eine Zahl mit nur einer Bedeutung. {readings} eingeben.',
    fr: '« {found} » peut signifier {readings} ; valeur permise : un nombre à sens unique. Saisir {readings}.',
  },
  '“{found}” has the unit “{unit}”, which does not fit here; {allowed} is allowed. Type the number alone.': {
    de: '„{found}“ hat die Einheit „{unit}“, die hier nicht passt; erlaubt: {allowed}. Nur die Zahl eingeben.',
    fr: '« {found} » porte l’unité « {unit} », qui ne convient pas ici ; valeur permise : {allowed}. Saisir le nombre seul.',
  },
  '“{found}” has the unit “{unit}”, which does not fit here; {allowed} is allowed. Type the number alone or with {units}.': {
    de: '„{found}“ hat die Einheit „{unit}“, die hier nicht passt; erlaubt: {allowed}. Die Zahl allein oder mit {units} eingeben.',
    fr: '« {found} » porte l’unité « {unit} », qui ne convient pas ici ; valeur permise : {allowed}. Saisir le nombre seul ou avec {units}.',
  },
  '{power} at {voltage} V is {draw} {unit}': {
    de: '{power} bei {voltage} V sind {draw} {unit}',
    fr: '{power} sous {voltage} V donnent {draw} {unit}',
  },
} satisfies Area;
