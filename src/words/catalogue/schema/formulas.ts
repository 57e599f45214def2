import type { Area } from '../translation.ts';

/** What is said of a formula. */
export const formulas = {
  '{name} changes by itself, and a schedule must not. Enter the value instead.': {
    de: '{name} ändert sich von selbst, und das darf eine Lastaufstellung nicht. Stattdessen den Wert eingeben.',
    fr: '{name} change de valeur sans intervention, ce qu’un bilan de charge ne doit pas faire. Saisir plutôt la valeur.',
  },
  '{name} tells where cells stand, which changes when rows move. Refer to the cells themselves.': {
    de: '{name} gibt die Lage von Zellen an, und die ändert sich mit dem Verschieben von Zeilen. Auf die Zellen selbst verweisen.',
    fr: '{name} donne la position de cellules, qui change quand des lignes sont déplacées. Faire référence aux cellules mêmes.',
  },
  '{name} cannot be used here. Use XLOOKUP, or INDEX with MATCH.': {
    de: '{name} kann hier nicht verwendet werden. XLOOKUP oder INDEX mit MATCH verwenden.',
    fr: '{name} ne peut pas servir ici. Employer XLOOKUP, ou INDEX avec MATCH.',
  },
  'A quotation mark is missing in the formula. Put texts between two of them.': {
    de: 'In der Formel fehlt ein Anführungszeichen. Texte zwischen zwei Anführungszeichen setzen.',
    fr: 'Il manque un guillemet dans la formule. Mettre les textes entre deux guillemets.',
  },
  'The formula cannot be read at {sign}: refer to cells as D3, D3:D5, types!D3 or [types.D3], not to whole rows or columns.': {
    de: 'Die Formel ist bei {sign} nicht lesbar: auf Zellen als D3, D3:D5, types!D3 oder [types.D3] verweisen, nicht auf ganze Zeilen oder Spalten.',
    fr: 'La formule est illisible à {sign} : faire référence à des cellules comme D3, D3:D5, types!D3 ou [types.D3], non à des lignes ou colonnes entières.',
  },
  '{name} is a function or a name that is not known. Correct its spelling, or enter the value instead.': {
    de: '{name} ist als Funktion oder Name nicht bekannt. Die Schreibweise berichtigen oder stattdessen den Wert eingeben.',
    fr: '{name} n’est connu ni comme fonction ni comme nom. Corriger l’orthographe ou saisir plutôt la valeur.',
  },
  'The formula nests more than {most} parentheses. Split it over several cells.': {
    de: 'Die Formel schachtelt mehr als {most} Klammern. Die Formel auf mehrere Zellen verteilen.',
    fr: 'La formule imbrique plus de {most} parenthèses. La répartir sur plusieurs cellules.',
  },
  'The parentheses of the formula do not match. Add or remove one.': {
    de: 'Die Klammern der Formel gehen nicht auf. Eine ergänzen oder entfernen.',
    fr: 'Les parenthèses de la formule ne s’accordent pas. En ajouter ou en retirer une.',
  },
  'The formula has more than {most} signs in a row. Take some out.': {
    de: 'Die Formel hat mehr als {most} Vorzeichen hintereinander. Einige entfernen.',
    fr: 'La formule a plus de {most} signes à la suite. En retirer quelques-uns.',
  },
  'There is no sheet {name}: the sheets are {sheets}.': {
    de: 'Es gibt kein Blatt {name}. Eines von diesen nennen: {sheets}.',
    fr: 'Il n’y a pas de feuille {name}. Indiquer l’une de celles-ci : {sheets}.',
  },
  'The sheet {sheet} has no column {letters}: its columns are A to {last}.': {
    de: 'Das Blatt {sheet} hat keine Spalte {letters}: seine Spalten sind A bis {last}.',
    fr: 'La feuille {sheet} n’a pas de colonne {letters} : ses colonnes vont de A à {last}.',
  },
  '{title} of the sheet {sheet} is worked out last and no formula can read it. Refer to a figure.': {
    de: '{title} auf dem Blatt {sheet} wird zuletzt ermittelt; keine Formel kann es lesen. Auf eine Zahl verweisen.',
    fr: '{title} de la feuille {sheet} s’établit en dernier et aucune formule ne peut le lire. Faire référence à un nombre.',
  },
  'The sheet {sheet} has no row {row}: refer to a row that is there.': {
    de: 'Das Blatt {sheet} hat keine Zeile {row}: auf eine vorhandene Zeile verweisen.',
    fr: 'La feuille {sheet} n’a pas de ligne {row} : faire référence à une ligne existante.',
  },
  '{reference} reaches from the sheet {sheet} to {other}. Refer to cells of one sheet.': {
    de: '{reference} reicht vom Blatt {sheet} bis {other}. Auf Zellen eines einzigen Blatts verweisen.',
    fr: '{reference} va de la feuille {sheet} à {other}. Faire référence à des cellules d’une seule feuille.',
  },
  'The formula has {length} characters; at most {most} are allowed. Split it over several cells.': {
    de: 'Die Formel hat {length} Zeichen; erlaubt sind höchstens {most}. Die Formel auf mehrere Zellen verteilen.',
    fr: 'La formule a {length} caractères ; au plus {most} sont permis. La répartir sur plusieurs cellules.',
  },
  'The signs ⟦ and ⟧ cannot stand in a formula. Take them out.': {
    de: 'Die Zeichen ⟦ und ⟧ können nicht in einer Formel stehen. Beide entfernen.',
    fr: 'Les signes ⟦ et ⟧ ne peuvent pas figurer dans une formule. Les retirer.',
  },
  'this is not a formula. Arguments are parted by ; and decimals by a point, as in =ROUND(2.5*3;0).': {
    de: 'das ist keine Formel. Argumente werden durch Semikolon getrennt, Dezimalstellen durch Komma oder Punkt, wie in =ROUND(2,5*3;0).',
    fr: 'ce n’est pas une formule. Les arguments sont séparés par un point-virgule et les décimales par une virgule ou un point, comme dans =ROUND(2,5*3;0).',
  },
  'it gives a function too few or too many arguments. Correct it.': {
    de: 'sie gibt einer Funktion zu wenige oder zu viele Argumente. Die Formel berichtigen.',
    fr: 'elle donne à une fonction trop ou trop peu d’arguments. La corriger.',
  },
  'it uses a function or a name that is not known. Correct its spelling.': {
    de: 'sie verwendet eine Funktion oder einen Namen, die nicht bekannt sind. Die Schreibweise berichtigen.',
    fr: 'elle emploie une fonction ou un nom inconnus. Corriger l’orthographe.',
  },
  'not a finite number': { de: 'keine endliche Zahl', fr: 'pas un nombre fini' },
  '{value} is not a whole number': { de: '{value} ist keine ganze Zahl', fr: '{value} n’est pas un nombre entier' },
  '{value} is less than {limit}': { de: '{value} ist kleiner als {limit}', fr: '{value} est inférieur à {limit}' },
  '{value} is not greater than {limit}': {
    de: '{value} ist nicht größer als {limit}',
    fr: '{value} n’est pas supérieur à {limit}',
  },
  '{value} is greater than {limit}': { de: '{value} ist größer als {limit}', fr: '{value} est supérieur à {limit}' },
} satisfies Area;
