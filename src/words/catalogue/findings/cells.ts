import type { Area } from '../translation.ts';

/** What is found in cells, tags and device rows. */
export const cells = {
  '{name}: the formula in {column} divides by zero. Check the cell that it divides by.': {
    de: '{name}: Die Formel in „{column}“ teilt durch null. Die Zelle prüfen, durch die sie teilt.',
    fr: '{name} : la formule dans « {column} » divise par zéro. Vérifier la cellule du diviseur.',
  },
  '{name}: the formula in {column} uses a function or a name that is not known. Correct its spelling.': {
    de: '{name}: Die Formel in „{column}“ enthält eine unbekannte Funktion oder einen unbekannten Namen. Die Schreibweise berichtigen.',
    fr: '{name} : la formule dans « {column} » contient une fonction ou un nom inconnu. Corriger l’orthographe.',
  },
  '{name}: the formula in {column} refers to a row that has been deleted. Refer to another one.': {
    de: '{name}: Die Formel in „{column}“ verweist auf eine gelöschte Zeile. Auf eine andere verweisen.',
    fr: '{name} : la formule dans « {column} » fait référence à une ligne supprimée. Faire référence à une autre.',
  },
  '{name}: the formula in {column} depends on its own result. Take the reference back to this cell out.': {
    de: '{name}: Die Formel in „{column}“ hängt von ihrem eigenen Ergebnis ab. Den Verweis auf diese Zelle entfernen.',
    fr: '{name} : la formule dans « {column} » dépend de son propre résultat. Supprimer la référence à cette cellule.',
  },
  '{name}: the formula in {column} reads a total that its own cell feeds. Refer to another cell.': {
    de: '{name}: Die Formel in „{column}“ liest eine Summe, in die ihre eigene Zelle eingeht. Auf eine andere Zelle verweisen.',
    fr: '{name} : la formule dans « {column} » lit un total auquel sa propre cellule contribue. Faire référence à une autre cellule.',
  },
  '{name}: the formula in {column} has no finite result. Check what it refers to.': {
    de: '{name}: Die Formel in „{column}“ hat kein endliches Ergebnis. Prüfen, worauf sie verweist.',
    fr: '{name} : la formule dans « {column} » n’a pas de résultat fini. Vérifier ce à quoi elle fait référence.',
  },
  '{name}: the formula in {column} does not give a number. Check what it refers to.': {
    de: '{name}: Die Formel in „{column}“ ergibt keine Zahl. Prüfen, worauf sie verweist.',
    fr: '{name} : la formule dans « {column} » ne donne pas un nombre. Vérifier ce à quoi elle fait référence.',
  },
  '{name}: the formula in {column} cannot be read. Arguments are parted by ; and decimals by a point: correct it.': {
    de: '{name}: Die Formel in „{column}“ ist nicht lesbar. Argumente werden durch Semikolon getrennt, Dezimalstellen durch Komma oder Punkt: berichtigen.',
    fr: '{name} : la formule dans « {column} » est illisible. Séparer les arguments par un point-virgule et les décimales par une virgule ou un point.',
  },
  '{name}: the formula in {column} finds no match for what it looks up. Check the value that it looks for.': {
    de: '{name}: Die Formel in „{column}“ findet den gesuchten Wert nicht. Den Suchwert prüfen.',
    fr: '{name} : la formule dans « {column} » ne trouve pas la valeur cherchée. Vérifier cette valeur.',
  },
  '{name}: the formula in {column} cannot be worked out. Simplify it.': {
    de: '{name}: Die Formel in „{column}“ lässt sich nicht berechnen. Die Formel vereinfachen.',
    fr: '{name} : la formule dans « {column} » ne peut pas être calculée. La simplifier.',
  },
  '{name}: the formula in {column} reads a cell that is empty. Fill that cell.': {
    de: '{name}: Die Formel in „{column}“ liest eine leere Zelle. Diese Zelle ausfüllen.',
    fr: '{name} : la formule dans « {column} » lit une cellule vide. Remplir cette cellule.',
  },
  '{name}: the formula in {column} gives a function too few or too many arguments. Correct it.': {
    de: '{name}: Die Formel in „{column}“ gibt einer Funktion zu wenige oder zu viele Argumente. Die Formel berichtigen.',
    fr: '{name} : la formule dans « {column} » donne trop ou trop peu d’arguments à une fonction. La corriger.',
  },
  '{name}: the formula in {column} gives a result that is not allowed: {problem}. Correct it.': {
    de: '{name}: Die Formel in „{column}“ ergibt einen unzulässigen Wert: {problem}. Die Formel berichtigen.',
    fr: '{name} : la formule dans « {column} » donne un résultat non admis : {problem}. La corriger.',
  },
  '{name}: {column} {problem}. Correct it.': {
    de: '{name}, {column}: {problem}. Den Wert berichtigen.',
    fr: '{name}, {column} : {problem}. Corriger la valeur.',
  },
  '{name}: there is no {row} {tag}. Add it to the sheet {sheet}, or correct the tag.': {
    de: '{name}: {row} {tag} gibt es nicht. Die Zeile auf dem Blatt „{sheet}“ ergänzen oder das Kennzeichen berichtigen.',
    fr: '{name} : {row} {tag} introuvable. L’ajouter à la feuille « {sheet} » ou corriger le repère.',
  },
  '{name}: nothing can refer to it. Give it a tag.': {
    de: '{name}: Nichts kann darauf verweisen. Ein Kennzeichen vergeben.',
    fr: '{name} : rien ne peut y faire référence. Lui donner un repère.',
  },
  '{name} stands in more than one row. Give each row a tag of its own.': {
    de: '{name} steht in mehr als einer Zeile. Jeder Zeile ein eigenes Kennzeichen geben.',
    fr: '{name} : repère présent sur plusieurs lignes. Donner à chaque ligne son propre repère.',
  },
  '{name} stands in more than one row. References mean the first of them. Give each row a tag of its own.': {
    de: '{name} steht in mehr als einer Zeile. Verweise gelten der ersten davon. Jeder Zeile ein eigenes Kennzeichen geben.',
    fr: '{name} : repère présent sur plusieurs lignes. Les références désignent la première. Donner à chaque ligne son propre repère.',
  },
  'The current of {row} is not known. Enter how many devices there are.': {
    de: '{row}: Stromaufnahme nicht bekannt. Die Anzahl der Geräte eintragen.',
    fr: '{row} : courant inconnu. Indiquer le nombre d’appareils.',
  },
  'The current of {row} is not known. Choose a type, or enter the unit draw in mA.': {
    de: '{row}: Stromaufnahme nicht bekannt. Einen Gerätetyp wählen oder die Stromaufnahme je Gerät in mA eintragen.',
    fr: '{row} : courant inconnu. Choisir un type d’appareil ou indiquer le courant unitaire en mA.',
  },
  'The current of {row} is not known. Its type gives a power: choose a rail, whose voltage makes it a current, or enter the unit draw here in mA.': {
    de: '{row}: Stromaufnahme nicht bekannt. Der Gerätetyp gibt eine Leistung an: eine Schiene wählen, deren Spannung daraus den Strom ergibt, oder die Stromaufnahme je Gerät hier in mA eintragen.',
    fr: '{row} : courant inconnu. Le type d’appareil donne une puissance : choisir un rail, dont la tension donne le courant, ou indiquer ici le courant unitaire en mA.',
  },
  'The current of {row} is not known. Enter a draw or a power for its type, or the unit draw here in mA.': {
    de: '{row}: Stromaufnahme nicht bekannt. Stromaufnahme oder Leistung beim Gerätetyp eintragen oder hier die Stromaufnahme je Gerät in mA.',
    fr: '{row} : courant inconnu. Indiquer le courant absorbé ou la puissance du type d’appareil, ou ici le courant unitaire en mA.',
  },
  'The current of {row} is not known. Correct its diversity.': {
    de: '{row}: Stromaufnahme nicht bekannt. Den Gleichzeitigkeitsfaktor berichtigen.',
    fr: '{row} : courant inconnu. Corriger le facteur de simultanéité.',
  },
  '{name} has no rail, so its current counts in no supply. Choose a rail.': {
    de: '{name}: keine Schiene angegeben; der Strom zählt bei keiner Versorgung. Eine Schiene wählen.',
    fr: '{name} : aucun rail indiqué ; le courant n’est compté dans aucune alimentation. Choisir un rail.',
  },
  '{name} takes an unknown number of points on branch {branch}. Enter its quantity and a type that says how many points one device takes.': {
    de: '{name}: Zahl der Busplätze auf Buslinie {branch} nicht bekannt. Die Anzahl eintragen und einen Gerätetyp wählen, der die Busplätze je Gerät angibt.',
    fr: '{name} : nombre de points sur la ligne de bus {branch} inconnu. Indiquer la quantité et un type d’appareil qui donne les points par appareil.',
  },
  '{name} is on rail {rail} but its run {run} is fed from rail {other}. Correct one of them.': {
    de: '{name} liegt an Schiene {rail}, die Leitung {run} wird aber von Schiene {other} gespeist. Eines von beiden berichtigen.',
    fr: '{name} : raccordement au rail {rail}, mais la liaison {run} est alimentée par le rail {other}. Corriger l’un des deux.',
  },
  '{name} is {distance} m along its run, which is {length} m long. Correct one of them.': {
    de: '{name}: Entfernung {distance} m, die Leitung ist aber nur {length} m lang. Eines von beiden berichtigen.',
    fr: '{name} : distance de {distance} m, mais la liaison n’a que {length} m. Corriger l’un des deux.',
  },
} satisfies Area;
