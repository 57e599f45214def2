import type { Area } from '../translation.ts';

/** What is said of a takeoff and of each of its lines. */
export const takeoff = {
  'The takeoff is empty. Choose another file, or paste the list with its headings.': {
    de: 'Der Mengenauszug ist leer. Eine andere Datei wählen oder die Liste mit ihren Überschriften einfügen.',
    fr: 'Le métré est vide. Choisir un autre fichier, ou coller la liste avec ses intitulés.',
  },
  'No column is known to name the devices. Choose the one that does.': {
    de: 'Welche Spalte die Geräte nennt, ist nicht bekannt. Die Spalte auswählen.',
    fr: 'La colonne qui désigne les appareils n’est pas connue. La choisir.',
  },
  'No column is known to hold the quantities. Choose the one that does.': {
    de: 'Welche Spalte die Mengen enthält, ist nicht bekannt. Die Spalte auswählen.',
    fr: 'La colonne qui contient les quantités n’est pas connue. La choisir.',
  },
  'Columns that are not read, with the number of their values: {columns}.': {
    de: 'Spalten, die nicht gelesen werden, mit der Zahl ihrer Werte: {columns}.',
    fr: 'Colonnes qui ne sont pas lues, avec le nombre de leurs valeurs : {columns}.',
  },
  'column {number} ({values})': { de: 'Spalte {number} ({values})', fr: 'colonne {number} ({values})' },
  '“{heading}” ({values})': { de: '„{heading}“ ({values})', fr: '« {heading} » ({values})' },
  'The line is blank.': { de: 'Die Zeile ist leer.', fr: 'La ligne est vide.' },
  'It stands above the headings.': {
    de: 'Sie steht über den Überschriften.',
    fr: 'Elle se trouve au-dessus des intitulés.',
  },
  'These are the headings.': { de: 'Das sind die Überschriften.', fr: 'Ce sont les intitulés.' },
  'The headings are repeated.': { de: 'Die Überschriften wiederholen sich.', fr: 'Les intitulés se répètent.' },
  'Left out by decision.': { de: 'Durch Entscheidung weggelassen.', fr: 'Écartée par décision.' },
  'It is a title or a remark: a single text without a quantity.': {
    de: 'Ein Titel oder eine Bemerkung: ein einzelner Text ohne Menge.',
    fr: 'Un titre ou une remarque : un texte seul, sans quantité.',
  },
  'It is a total without a legible quantity.': {
    de: 'Eine Summe ohne lesbare Menge.',
    fr: 'Un total sans quantité lisible.',
  },
  'It is a total: {qty} is the sum of the lines from {line} on.': {
    de: 'Eine Summe: {qty} ergibt sich aus den Zeilen ab Zeile {line}.',
    fr: 'Un total : {qty} est la somme des lignes à partir de la ligne {line}.',
  },
  'It is called a total and says {qty}, but the lines above come to {expected}. Check both, then leave it out.': {
    de: 'Als Summe bezeichnet, mit {qty}; die Zeilen darüber ergeben aber {expected}. Beides prüfen, dann die Zeile weglassen.',
    fr: 'Appelée total, avec {qty} ; or les lignes au-dessus donnent {expected}. Vérifier les deux, puis écarter la ligne.',
  },
  'It names no device and has no quantity.': {
    de: 'Sie nennt kein Gerät und hat keine Menge.',
    fr: 'Elle ne désigne aucun appareil et n’a pas de quantité.',
  },
  'It has a quantity but names no device. Say what it counts in the takeoff, or leave it out.': {
    de: 'Sie hat eine Menge, nennt aber kein Gerät. Im Mengenauszug angeben, was gezählt wird, oder die Zeile weglassen.',
    fr: 'Elle a une quantité mais ne désigne aucun appareil. Indiquer dans le métré ce qu’elle compte, ou écarter la ligne.',
  },
  'It has no quantity. Say how many there are.': {
    de: 'Sie hat keine Menge. Angeben, wie viele es sind.',
    fr: 'Elle n’a pas de quantité. Indiquer combien il y en a.',
  },
  'There are none: the quantity is 0.': {
    de: 'Es gibt keine: Die Menge ist 0.',
    fr: 'Il n’y en a pas : la quantité est 0.',
  },
  '“{text}” is a formula, not a count. Say how many there are.': {
    de: '„{text}“ ist eine Formel, keine Stückzahl. Angeben, wie viele es sind.',
    fr: '« {text} » est une formule, pas un nombre. Indiquer combien il y en a.',
  },
  '“{text}” is not a plain count. Say how many there are.': {
    de: '„{text}“ ist keine eindeutige Stückzahl. Angeben, wie viele es sind.',
    fr: '« {text} » n’est pas un simple nombre. Indiquer combien il y en a.',
  },
  '“{text}” in “{unit}” is not a plain count. Say how many there are.': {
    de: '„{text}“ in „{unit}“ ist keine eindeutige Stückzahl. Angeben, wie viele es sind.',
    fr: '« {text} » en « {unit} » n’est pas un simple nombre. Indiquer combien il y en a.',
  },
  '“{text}” is more than {most}. Say how many there are.': {
    de: '„{text}“ ist mehr als {most}. Angeben, wie viele es sind.',
    fr: '« {text} » dépasse {most}. Indiquer combien il y en a.',
  },
  'It is a length, and {type} is not counted by the metre. Say how many there are.': {
    de: 'Es ist eine Länge, und {type} wird nicht in Metern gezählt. Angeben, wie viele es sind.',
    fr: 'C’est une longueur, et {type} ne se compte pas au mètre. Indiquer combien il y en a.',
  },
  'Its area is the title on line {line}.': {
    de: 'Ihr Bereich ist der Titel in Zeile {line}.',
    fr: 'Sa zone est le titre de la ligne {line}.',
  },
  'The same type in the same place as on line {line}, to which it is added.': {
    de: 'Derselbe Typ am selben Ort wie in Zeile {line}; dort hinzugezählt.',
    fr: 'Le même type au même endroit qu’à la ligne {line}, à laquelle elle s’ajoute.',
  },
  'It has the name of its type.': { de: 'Sie trägt den Namen ihres Typs.', fr: 'Elle porte le nom de son type.' },
  '“{name}” is the name of {type}.': {
    de: '„{name}“ ist der Name von {type}.',
    fr: '« {name} » est le nom de {type}.',
  },
  '“{name}” is an alias of {type}.': {
    de: '„{name}“ ist ein anderer Name von {type}.',
    fr: '« {name} » est un autre nom de {type}.',
  },
  '“{name}” is like {types}. Confirm the type, or make it a new one.': {
    de: '„{name}“ ähnelt {types}. Den Typ bestätigen oder einen neuen anlegen.',
    fr: '« {name} » ressemble à {types}. Confirmer le type, ou en créer un nouveau.',
  },
  '“{name}” was confirmed to be {type}.': {
    de: '„{name}“ wurde als {type} bestätigt.',
    fr: '« {name} » a été confirmé comme {type}.',
  },
  '“{name}” becomes a new type, whose draw is not known yet.': {
    de: '„{name}“ wird ein neuer Typ, dessen Stromaufnahme noch nicht bekannt ist.',
    fr: '« {name} » devient un nouveau type, dont le courant absorbé n’est pas encore connu.',
  },
  '“{name}” is left out by decision.': {
    de: '„{name}“ ist durch Entscheidung weggelassen.',
    fr: '« {name} » est écarté par décision.',
  },
  'There is no type {type}. Choose another one for “{name}”.': {
    de: 'Den Typ {type} gibt es nicht. Für „{name}“ einen anderen wählen.',
    fr: 'Le type {type} n’existe pas. En choisir un autre pour « {name} ».',
  },
  'Read {read} = taken {taken} + left out {leftOut} + undecided {undecided}': {
    de: 'Gelesen {read} = übernommen {taken} + weggelassen {leftOut} + offen {undecided}',
    fr: 'Lu {read} = retenu {taken} + écarté {leftOut} + à décider {undecided}',
  },
  'Read {read} = taken {taken} + left out {leftOut} ({inTotals} in totals) + undecided {undecided}': {
    de: 'Gelesen {read} = übernommen {taken} + weggelassen {leftOut} ({inTotals} in Summen) + offen {undecided}',
    fr: 'Lu {read} = retenu {taken} + écarté {leftOut} (dont {inTotals} en totaux) + à décider {undecided}',
  },
  'Takeoff of {devices, plural, one {# device} other {# devices}} in {rows, plural, one {# row} other {# rows}}': {
    de: 'Mengenauszug: {devices, plural, one {# Gerät} other {# Geräte}} in {rows, plural, one {# Zeile} other {# Zeilen}}',
    fr: 'Métré : {devices, plural, one {# appareil} other {# appareils}} en {rows, plural, one {# ligne} other {# lignes}}',
  },
  'From a takeoff. Enter its draw or its power, and say where the figure comes from.': {
    de: 'Aus einem Mengenauszug. Stromaufnahme oder Leistung eintragen und angeben, woher der Wert stammt.',
    fr: 'Issu d’un métré. Saisir le courant absorbé ou la puissance, et indiquer d’où vient la valeur.',
  },
} satisfies Area;
