import type { Area } from './translation.ts';

/** Sharing devices out, sizing, and what every work area says. */
export const sharing = {
  'Back to the sheets (Esc)': { de: 'Zurück zu den Blättern (Esc)', fr: 'Retour aux feuilles (Échap)' },
  Close: { de: 'Schließen', fr: 'Fermer' },
  '{names} and {more} more': { de: '{names} und {more} weitere', fr: '{names} et {more} de plus' },
  'and {more} more': { de: 'und {more} weitere', fr: 'et {more} de plus' },
  'devices, row {row}: has no place. {reason}': { de: 'Geräte, Zeile {row}: nicht zugeordnet. {reason}', fr: 'appareils, ligne {row} : non placé. {reason}' },
  'devices, row {row} ({ref}): has no place. {reason}': {
    de: 'Geräte, Zeile {row} ({ref}): nicht zugeordnet. {reason}',
    fr: 'appareils, ligne {row} ({ref}) : non placé. {reason}',
  },
  '{purpose}, {voltage} V': { de: '{purpose}, {voltage} V', fr: '{purpose}, {voltage} V' },
  'Branch {tag} has no known limit, so nothing is put on it.': {
    de: 'Buslinie {tag}: Grenze nicht bekannt, daher wird nichts darauf gelegt.',
    fr: 'Ligne de bus {tag} : limite inconnue, rien n’y est donc placé.',
  },
  'Branch {tag} keeps devices whose points are not known, so nothing is added to it.': {
    de: 'Buslinie {tag} behält Geräte, deren Busplätze nicht bekannt sind; daher kommt nichts hinzu.',
    fr: 'Ligne de bus {tag} : des appareils au nombre de points inconnu y restent, rien n’y est donc ajouté.',
  },
  'Supply {tag} has no known rating, so nothing is put on it.': {
    de: 'Versorgung {tag}: Bemessungsstrom nicht bekannt, daher wird nichts darauf gelegt.',
    fr: 'Alimentation {tag} : courant assigné inconnu, rien n’y est donc placé.',
  },
  'Supply {tag} keeps devices of several purposes, so nothing is added to it.': {
    de: 'Versorgung {tag} behält Geräte mehrerer Verwendungen; daher kommt nichts hinzu.',
    fr: 'Alimentation {tag} : des appareils de plusieurs usages y restent, rien n’y est donc ajouté.',
  },
  'Supply {tag} keeps devices whose demand is not known, so nothing is added to it.': {
    de: 'Versorgung {tag} behält Geräte, deren Strombedarf nicht bekannt ist; daher kommt nichts hinzu.',
    fr: 'Alimentation {tag} : des appareils au courant demandé inconnu y restent, rien n’y est donc ajouté.',
  },
  'The points of its type are not known. Choose a type that says how many points one device takes.': {
    de: 'Die Busplätze des Gerätetyps sind nicht bekannt. Einen Gerätetyp wählen, der die Busplätze je Gerät angibt.',
    fr: 'Le nombre de points du type d’appareil n’est pas connu. Choisir un type qui donne les points par appareil.',
  },
  'It takes no point of a branch.': { de: 'Belegt keinen Busplatz.', fr: 'N’occupe aucun point de ligne de bus.' },
  'Its demand is not known. Enter its unit draw, or a type that has a draw or a power.': {
    de: 'Der Strombedarf ist nicht bekannt. Die Stromaufnahme je Gerät eintragen oder einen Gerätetyp mit Stromaufnahme oder Leistung.',
    fr: 'Le courant demandé n’est pas connu. Indiquer le courant unitaire, ou un type d’appareil qui donne un courant absorbé ou une puissance.',
  },
  'It draws no current.': { de: 'Nimmt keinen Strom auf.', fr: 'N’absorbe aucun courant.' },
  'Its quantity is not known. Enter how many devices there are.': {
    de: 'Die Anzahl ist nicht bekannt. Die Anzahl der Geräte eintragen.',
    fr: 'La quantité n’est pas connue. Indiquer le nombre d’appareils.',
  },
  'There is no supply of known rating to put it on. Enter a supply with its rated current.': {
    de: 'Es gibt keine Versorgung mit bekanntem Bemessungsstrom dafür. Eine Versorgung mit Bemessungsstrom eintragen.',
    fr: 'Aucune alimentation de courant assigné connu ne peut le recevoir. Indiquer une alimentation avec son courant assigné.',
  },
  'Its run feeds devices of several purposes, which are kept on supplies of their own. Give them runs of their own.': {
    de: 'Die Leitung speist Geräte mehrerer Verwendungen, die eigene Versorgungen haben. Für jede Verwendung eine eigene Leitung vorsehen.',
    fr: 'La liaison alimente des appareils de plusieurs usages, qui ont chacun leurs alimentations. Prévoir une liaison par usage.',
  },
  'The rail that feeds its run has no room for it, or is kept for another purpose. Give it another run.': {
    de: 'Die Schiene, die die Leitung speist, hat keine Reserve dafür oder dient einer anderen Verwendung. Eine andere Leitung wählen.',
    fr: 'Le rail qui alimente la liaison n’a plus de marge ou sert à un autre usage. Choisir une autre liaison.',
  },
  '{of, select, row {The row takes} other {One device takes}} {size, plural, one {# point} other {# points}}, and no branch that is large enough has room left. Enter another one.': {
    de: '{of, select, row {Die Zeile braucht} other {Ein Gerät braucht}} {size, plural, one {# Busplatz} other {# Busplätze}}, und keine Buslinie, die dafür groß genug ist, hat noch Platz. Eine weitere eintragen.',
    fr: '{of, select, row {La ligne demande} other {Un appareil demande}} {size, plural, one {# point} other {# points}}, et aucune ligne de bus assez grande n’a encore de place. En indiquer une autre.',
  },
  '{of, select, row {The row takes} other {One device takes}} {size, plural, one {# point} other {# points}}; a branch has room for {most, plural, one {# point} other {# points}} at most. {of, select, row {Split the row, or enter} other {Enter}} a larger branch.': {
    de: '{of, select, row {Die Zeile braucht} other {Ein Gerät braucht}} {size, plural, one {# Busplatz} other {# Busplätze}}; eine Buslinie hat höchstens Platz für {most, plural, one {# Busplatz} other {# Busplätze}}. {of, select, row {Die Zeile teilen oder eine größere Buslinie eintragen.} other {Eine größere Buslinie eintragen.}}',
    fr: '{of, select, row {La ligne demande} other {Un appareil demande}} {size, plural, one {# point} other {# points}} ; une ligne de bus en reçoit au plus {most, plural, one {#} other {#}}. {of, select, row {Diviser la ligne ou indiquer une ligne de bus plus grande.} other {Indiquer une ligne de bus plus grande.}}',
  },
  '{of, select, run {The devices of its run together take} row {The row takes} other {One device takes}} {size} A, and no supply that is large enough has room left. Enter another one.': {
    de: '{of, select, run {Die Geräte der Leitung brauchen zusammen} row {Die Zeile braucht} other {Ein Gerät braucht}} {size} A, und keine Versorgung, die dafür groß genug ist, hat noch Reserve. Eine weitere eintragen.',
    fr: '{of, select, run {Les appareils de la liaison demandent ensemble} row {La ligne demande} other {Un appareil demande}} {size} A, et aucune alimentation assez puissante n’a encore de marge. En indiquer une autre.',
  },
  '{of, select, run {The devices of its run together take} row {The row takes} other {One device takes}} {size} A; a supply has room for {most} A at most. {of, select, run {Spread them over more runs, or enter} row {Split the row, or enter} other {Enter}} a larger supply.': {
    de: '{of, select, run {Die Geräte der Leitung brauchen zusammen} row {Die Zeile braucht} other {Ein Gerät braucht}} {size} A; eine Versorgung hat höchstens {most} A frei. {of, select, run {Auf mehrere Leitungen verteilen oder eine größere Versorgung eintragen.} row {Die Zeile teilen oder eine größere Versorgung eintragen.} other {Eine größere Versorgung eintragen.}}',
    fr: '{of, select, run {Les appareils de la liaison demandent ensemble} row {La ligne demande} other {Un appareil demande}} {size} A ; une alimentation peut en fournir {most} A au plus. {of, select, run {Les répartir sur plusieurs liaisons ou indiquer une alimentation plus puissante.} row {Diviser la ligne ou indiquer une alimentation plus puissante.} other {Indiquer une alimentation plus puissante.}}',
  },
  'Bus branch, {capacity} points': { de: 'Buslinie, {capacity} Busplätze', fr: 'Ligne de bus, {capacity} points' },
  '{points} points at {capacity} a branch, its limit less the reserve; the least number, with whole devices on each.': {
    de: '{points} Busplätze bei {capacity} je Buslinie, der Grenze ohne Reserve; die kleinste Zahl, mit ganzen Geräten auf jeder.',
    fr: '{points} points à {capacity} par ligne de bus, limite moins réserve ; le nombre minimal, avec des appareils entiers sur chacune.',
  },
  '{points} points at {capacity} a branch, its limit less the reserve; the fewest found, no fewer than {lowerBound}, with whole devices on each.': {
    de: '{points} Busplätze bei {capacity} je Buslinie, der Grenze ohne Reserve; die kleinste gefundene Zahl, nicht unter {lowerBound}, mit ganzen Geräten auf jeder.',
    fr: '{points} points à {capacity} par ligne de bus, limite moins réserve ; le plus petit nombre trouvé, pas moins de {lowerBound}, avec des appareils entiers sur chacune.',
  },
  'Bus branch, more than {capacity} points': {
    de: 'Buslinie, mehr als {capacity} Busplätze',
    fr: 'Ligne de bus, plus de {capacity} points',
  },
  '{rows} take more points in one piece than a branch may carry.': {
    de: '{rows}: in einem Stück mehr Busplätze, als eine Buslinie haben darf.',
    fr: '{rows} : plus de points d’un seul tenant que n’en admet une ligne de bus.',
  },
  'Devices of unknown points': { de: 'Geräte mit unbekannten Busplätzen', fr: 'Appareils au nombre de points inconnu' },
  'Not counted above: {rows}. Enter their quantity and a type that says how many points one takes.': {
    de: 'Oben nicht gezählt: {rows}. Anzahl eintragen und einen Gerätetyp wählen, der die Busplätze je Gerät angibt.',
    fr: 'Non comptés ci-dessus : {rows}. Indiquer la quantité et un type d’appareil qui donne les points par appareil.',
  },
  'Relay module, {contact}, {ways, plural, one {# way} other {# ways}}': {
    de: 'Relaismodul, {contact}, {ways, plural, one {# Kanal} other {# Kanäle}}',
    fr: 'Module à relais, {contact}, {ways, plural, one {# voie} other {# voies}}',
  },
  '{outputs, plural, one {# output} other {# outputs}} with this contact; {total} ways in {modules} is the least number of modules and, with it, the fewest ways of those kept.': {
    de: '{outputs, plural, one {# Ausgang} other {# Ausgänge}} mit diesem Kontakt; Module: {modules} mit zusammen {total} Kanälen, aus der Liste die kleinste Zahl von Modulen und dabei von Kanälen.',
    fr: '{outputs, plural, one {# sortie} other {# sorties}} avec ce contact ; modules : {modules}, soit {total} voies, le nombre minimal de modules de la liste et, à ce nombre, de voies.',
  },
  'Relay outputs without a contact': { de: 'Relaisausgänge ohne Kontakt', fr: 'Sorties à relais sans contact' },
  'Not counted above: {rows}. Choose their contact.': {
    de: 'Oben nicht gezählt: {rows}. Den Kontakt wählen.',
    fr: 'Non comptées ci-dessus : {rows}. Choisir leur contact.',
  },
  'Supply {voltage} V, {purpose}, {rating} A': {
    de: 'Versorgung {voltage} V, {purpose}, {rating} A',
    fr: 'Alimentation {voltage} V, {purpose}, {rating} A',
  },
  'Demand {demand} at a target of {target} % needs {needed} of rating; {total} in {supplies} is {claim, select, smallest {the least number and, with it, the smallest total rating of those kept} least {the least number of those kept} other {the fewest found}}, with whole devices on each.': {
    de: 'Strombedarf {demand} bei einem Zielwert von {target} % erfordert {needed} Bemessungsstrom; gewählt: {supplies} mit insgesamt {total}, {claim, select, smallest {die kleinste Zahl aus der Liste und dabei der kleinste Bemessungsstrom insgesamt} least {die kleinste Zahl aus der Liste} other {die kleinste gefundene Zahl}}, mit ganzen Geräten auf jeder.',
    fr: 'Courant demandé {demand} pour une cible de {target} % : il faut {needed} de courant assigné ; retenu : {supplies} pour un total de {total}, {claim, select, smallest {le nombre minimal de la liste et, à ce nombre, le plus petit courant assigné total} least {le nombre minimal de la liste} other {le plus petit nombre trouvé}}, avec des appareils entiers sur chacune.',
  },
  'Supply {voltage} V, {purpose}, larger than {rating} A': {
    de: 'Versorgung {voltage} V, {purpose}, größer als {rating} A',
    fr: 'Alimentation {voltage} V, {purpose}, plus de {rating} A',
  },
  '{rows} ask for more than {most} in one piece, up to which the largest supply kept may be loaded.': {
    de: '{rows}: in einem Stück mehr als {most}, womit die größte Versorgung der Liste belastet werden darf.',
    fr: '{rows} : plus de {most} d’un seul tenant, charge admise de la plus grande alimentation de la liste.',
  },
  'Devices of unknown demand, {voltage} V, {purpose}': {
    de: 'Geräte mit unbekanntem Strombedarf, {voltage} V, {purpose}',
    fr: 'Appareils au courant demandé inconnu, {voltage} V, {purpose}',
  },
  'Not counted above: {rows}. Enter their quantity and draw.': {
    de: 'Oben nicht gezählt: {rows}. Anzahl und Stromaufnahme eintragen.',
    fr: 'Non comptés ci-dessus : {rows}. Indiquer la quantité et le courant absorbé.',
  },
  Item: { de: 'Position', fr: 'Article' },
  Quantity: { de: 'Menge', fr: 'Quantité' },
  Why: { de: 'Begründung', fr: 'Justification' },
  'No device can be given a place.': {
    de: 'Kein Gerät lässt sich zuordnen.',
    fr: 'Aucun appareil ne peut être placé.',
  },
  'There are no devices to share out.': {
    de: 'Es gibt keine Geräte zum Aufteilen.',
    fr: 'Il n’y a aucun appareil à répartir.',
  },
  '{used, plural, one {# branch} other {# branches}}{added, plural, =0 {} other {, # of them new}}: proven to be the least.': {
    de: '{used, plural, one {# Buslinie} other {# Buslinien}}{added, plural, =0 {} other {, davon # neu}}: nachweislich die kleinste Zahl.',
    fr: '{used, plural, one {# ligne de bus} other {# lignes de bus}}{added, plural, =0 {} one {, dont # nouvelle} other {, dont # nouvelles}} : nombre minimal démontré.',
  },
  '{used, plural, one {# branch} other {# branches}}{added, plural, =0 {} other {, # of them new}}. No sharing does with fewer than {lowerBound}; whether it can be done with fewer than {used} is not known.': {
    de: '{used, plural, one {# Buslinie} other {# Buslinien}}{added, plural, =0 {} other {, davon # neu}}. Mit weniger als {lowerBound} geht es nicht; ob weniger als {used} genügen, ist nicht bekannt.',
    fr: '{used, plural, one {# ligne de bus} other {# lignes de bus}}{added, plural, =0 {} one {, dont # nouvelle} other {, dont # nouvelles}}. Impossible avec moins de {lowerBound} ; il n’est pas établi que moins de {used} suffisent.',
  },
  '{used, plural, one {# supply} other {# supplies}}{added, plural, =0 {} other {, # of them new}}: proven to be the least.': {
    de: '{used, plural, one {# Versorgung} other {# Versorgungen}}{added, plural, =0 {} other {, davon # neu}}: nachweislich die kleinste Zahl.',
    fr: '{used, plural, one {# alimentation} other {# alimentations}}{added, plural, =0 {} one {, dont # nouvelle} other {, dont # nouvelles}} : nombre minimal démontré.',
  },
  '{used, plural, one {# supply} other {# supplies}}{added, plural, =0 {} other {, # of them new}}. No sharing does with fewer than {lowerBound}; whether it can be done with fewer than {used} is not known.': {
    de: '{used, plural, one {# Versorgung} other {# Versorgungen}}{added, plural, =0 {} other {, davon # neu}}. Mit weniger als {lowerBound} geht es nicht; ob weniger als {used} genügen, ist nicht bekannt.',
    fr: '{used, plural, one {# alimentation} other {# alimentations}}{added, plural, =0 {} one {, dont # nouvelle} other {, dont # nouvelles}}. Impossible avec moins de {lowerBound} ; il n’est pas établi que moins de {used} suffisent.',
  },
  Supply: { de: 'Versorgung', fr: 'Alimentation' },
  'Before and after': { de: 'Vorher und nachher', fr: 'Avant et après' },
  For: { de: 'Für', fr: 'Pour' },
  After: { de: 'Nachher', fr: 'Après' },
  new: { de: 'neu', fr: 'nouvelle' },
  '{coming, plural, one {# come} other {# come}}': {
    de: '{coming, plural, one {# kommt} other {# kommen}}',
    fr: '{coming, plural, one {# arrive} other {# arrivent}}',
  },
  '{going, plural, one {# go} other {# go}}': {
    de: '{going, plural, one {# geht} other {# gehen}}',
    fr: '{going, plural, one {# part} other {# partent}}',
  },
  'as they were': { de: 'wie bisher', fr: 'inchangé' },
  '{carried} of {capacity}': { de: '{carried} von {capacity}', fr: '{carried} sur {capacity}' },
  '{tags}: what stays there is more than it may carry. Share out what is placed too, to put that right.': {
    de: '{tags}: Was dort bleibt, ist mehr als zulässig. Auch Zugeordnetes aufteilen, um das zu beheben.',
    fr: '{tags} : ce qui y reste dépasse la limite. Répartir aussi ce qui est placé pour y remédier.',
  },
  '{rows, plural, one {# row} other {# rows}} without a place': {
    de: '{rows, plural, one {# Zeile} other {# Zeilen}} nicht zugeordnet',
    fr: '{rows, plural, one {# ligne non placée} other {# lignes non placées}}',
  },
  '{moves, plural, one {# row or part of one moves} other {# rows and parts of rows move}}': {
    de: '{moves, plural, one {# Zeile oder ein Teil davon wechselt} other {# Zeilen und Teile von Zeilen wechseln}}',
    fr: '{moves, plural, one {# ligne ou partie de ligne change de place} other {# lignes et parties de ligne changent de place}}',
  },
  'without a place': { de: 'nicht zugeordnet', fr: 'non placé' },
  'Points of devices over bus branches, up to the limit of each less its reserve, on the least number of them.': {
    de: 'Busplätze der Geräte auf Buslinien, bis zur Grenze ohne Reserve, auf so wenige wie möglich.',
    fr: 'Points des appareils sur des lignes de bus, jusqu’à la limite moins la réserve, sur le moins de lignes possible.',
  },
  'Demand of devices over supplies, up to the target of what may be used, each purpose on supplies of its own.': {
    de: 'Strombedarf der Geräte auf Versorgungen, bis zum Zielwert des nutzbaren Stroms, jede Verwendung auf eigenen.',
    fr: 'Courant demandé des appareils sur des alimentations, jusqu’à la cible du courant utilisable, chaque usage sur les siennes.',
  },
  'Share out over': { de: 'Aufteilen auf', fr: 'Répartir sur' },
  'What is placed stays': { de: 'Zugeordnetes bleibt', fr: 'Ce qui est placé reste' },
  'Rows stay whole': { de: 'Zeilen bleiben ganz', fr: 'Lignes non divisées' },
  'Working it out …': { de: 'Wird berechnet …', fr: 'Calcul en cours …' },
  'Nothing to change': { de: 'Nichts zu ändern', fr: 'Rien à changer' },
  'Nothing is changed before you say so; Undo takes it back in one step.': {
    de: 'Erst der Knopf ändert etwas; „Rückgängig“ nimmt es in einem Schritt zurück.',
    fr: 'Rien ne change avant l’appui sur le bouton ; « Annuler » revient en arrière en une fois.',
  },
  'Share out over {used, plural, one {# branch} other {# branches}}': {
    de: 'Auf {used, plural, one {# Buslinie} other {# Buslinien}} aufteilen',
    fr: 'Répartir sur {used, plural, one {# ligne de bus} other {# lignes de bus}}',
  },
  'Share out over {used, plural, one {# supply} other {# supplies}}': {
    de: 'Auf {used, plural, one {# Versorgung} other {# Versorgungen}} aufteilen',
    fr: 'Répartir sur {used, plural, one {# alimentation} other {# alimentations}}',
  },
  'Sharing out over {used, plural, one {# branch} other {# branches}}': {
    de: 'Aufteilung auf {used, plural, one {# Buslinie} other {# Buslinien}}',
    fr: 'Répartition sur {used, plural, one {# ligne de bus} other {# lignes de bus}}',
  },
  'Sharing out over {used, plural, one {# supply} other {# supplies}}': {
    de: 'Aufteilung auf {used, plural, one {# Versorgung} other {# Versorgungen}}',
    fr: 'Répartition sur {used, plural, one {# alimentation} other {# alimentations}}',
  },
  'It could not be worked out: {failure}. Change what is shared, or reload the page.': {
    de: 'Die Berechnung ist gescheitert: {failure}. Die Auswahl ändern oder die Seite neu laden.',
    fr: 'Le calcul a échoué : {failure}. Changer ce qui est réparti ou recharger la page.',
  },
  'Part that is worked out': { de: 'Bereits berechneter Teil', fr: 'Partie déjà calculée' },
  'Stop and keep the best so far': {
    de: 'Anhalten und das bisher Beste behalten',
    fr: 'Arrêter et garder le meilleur résultat obtenu',
  },
  '{wrong} is no whole number above 0. Part the numbers with semicolons.': {
    de: '{wrong} ist keine ganze Zahl über 0. Zahlen durch Semikolon trennen.',
    fr: '{wrong} n’est pas un nombre entier supérieur à 0. Séparer les nombres par des points-virgules.',
  },
  '{wrong} is no number above 0. Part the numbers with semicolons.': {
    de: '{wrong} ist keine Zahl über 0. Zahlen durch Semikolon trennen.',
    fr: '{wrong} n’est pas un nombre supérieur à 0. Séparer les nombres par des points-virgules.',
  },
  'The list is empty. Enter at least one whole number.': {
    de: 'Die Liste ist leer. Mindestens eine ganze Zahl eintragen.',
    fr: 'La liste est vide. Indiquer au moins un nombre entier.',
  },
  'The list is empty. Enter at least one number.': {
    de: 'Die Liste ist leer. Mindestens eine Zahl eintragen.',
    fr: 'La liste est vide. Indiquer au moins un nombre.',
  },
  'Ratings of supplies [A]': {
    de: 'Bemessungsströme der Versorgungen [A]',
    fr: 'Courants assignés des alimentations [A]',
  },
  'Ways of relay modules': { de: 'Kanäle der Relaismodule', fr: 'Voies des modules à relais' },
  'The least number of supplies, bus branches and relay modules. A count for pricing, not a design.': {
    de: 'Die kleinste Zahl von Versorgungen, Buslinien und Relaismodulen. Eine Zählung für das Angebot, keine Planung.',
    fr: 'Le nombre minimal d’alimentations, de lignes de bus et de modules à relais. Un décompte pour le chiffrage, pas une étude.',
  },
  'It could not be worked out: {failure}': {
    de: 'Die Berechnung ist gescheitert: {failure}',
    fr: 'Le calcul a échoué : {failure}',
  },
  'The lists are kept in this browser.': {
    de: 'Die Listen werden in diesem Browser gespeichert.',
    fr: 'Les listes sont conservées dans ce navigateur.',
  },
  'Go back to the general lists': { de: 'Zurück zu den allgemeinen Listen', fr: 'Revenir aux listes générales' },
  'There is nothing to size yet. Enter devices, or read a takeoff.': {
    de: 'Noch gibt es nichts auszulegen. Geräte eintragen oder einen Mengenauszug einlesen.',
    fr: 'Il n’y a encore rien à dimensionner. Saisir des appareils ou lire un métré.',
  },
  'What the job needs': { de: 'Bedarf des Auftrags', fr: 'Besoins du projet' },
} satisfies Area;
