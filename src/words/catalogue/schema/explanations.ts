import type { Area } from '../translation.ts';

/** Why a figure is what it is, and how much more there is room for. */
export const explanations = {
  '{figure} of the device row {tag}': {
    de: '{figure} der Gerätezeile {tag}',
    fr: '{figure} de la ligne d’appareils {tag}',
  },
  '{figure} of the device type {tag}': { de: '{figure} des Gerätetyps {tag}', fr: '{figure} du type d’appareil {tag}' },
  '{figure} of the supply {tag}': { de: '{figure} der Versorgung {tag}', fr: '{figure} de l’alimentation {tag}' },
  '{figure} of the bus branch {tag}': { de: '{figure} der Buslinie {tag}', fr: '{figure} de la ligne de bus {tag}' },
  '{figure} of the run {tag}': { de: '{figure} der Leitung {tag}', fr: '{figure} de la liaison {tag}' },
  '{figure} of the conductor {tag}': { de: '{figure} des Leiters {tag}', fr: '{figure} du conducteur {tag}' },
  '{figure} of the relay output {tag}': {
    de: '{figure} des Relaisausgangs {tag}',
    fr: '{figure} de la sortie à relais {tag}',
  },
  '{figure} of the contact {tag}': { de: '{figure} des Kontakts {tag}', fr: '{figure} du contact {tag}' },
  '{figure} of the feed {tag}': { de: '{figure} des Netzabgangs {tag}', fr: '{figure} du départ secteur {tag}' },
  '{figure} of the enclosure {tag}': { de: '{figure} des Gehäuses {tag}', fr: '{figure} de l’enveloppe {tag}' },
  'not known': { de: 'nicht bekannt', fr: 'inconnu' },
  '{rows}, {missing} of them not known': {
    de: '{rows}, davon {missing} nicht bekannt',
    fr: '{rows}, dont {missing} sans valeur connue',
  },
  'default, as nothing is entered here': {
    de: 'Vorgabe, da hier nichts eingetragen ist',
    fr: 'valeur par défaut, car rien n’est saisi ici',
  },
  'entered here': { de: 'hier eingetragen', fr: 'saisi ici' },
  'the person who entered it': { de: 'wer es eingetragen hat', fr: 'la personne qui l’a saisi' },
  'default of the column': { de: 'Vorgabe der Spalte', fr: 'valeur par défaut de la colonne' },
  'Acceptance of a finding': { de: 'Akzeptieren eines Befunds', fr: 'Acceptation d’un constat' },
  'Withdrawal of an acceptance': { de: 'Zurückziehen einer Akzeptanz', fr: 'Retrait d’une acceptation' },
  'One more of this load takes nothing: any number fits.': {
    de: 'Eine weitere Last dieser Art braucht nichts: beliebig viele passen.',
    fr: 'Une charge de plus ne prend rien : toute quantité convient.',
  },
  'Room for no more of this load {before}.': {
    de: 'Kein Platz für eine weitere Last dieser Art {before}.',
    fr: 'Aucune place pour une charge identique de plus {before}.',
  },
  'Room for {count} more of this load {before}.': {
    de: 'Platz für weitere Lasten dieser Art {before}: {count}.',
    fr: 'Place pour d’autres charges identiques {before} : {count}.',
  },
  'Room for {count} more of this load {before}, {within, plural, =0 {none} other {#}} {target}.': {
    de: 'Platz für weitere Lasten dieser Art {before}: {count}, {target}: {within, plural, =0 {keine} other {#}}.',
    fr: 'Place pour d’autres charges identiques {before} : {count}, {target} : {within, plural, =0 {aucune} other {#}}.',
  },
  'One more of the type {type} takes nothing: any number fits.': {
    de: 'Ein weiteres Gerät vom Typ {type} braucht nichts: beliebig viele passen.',
    fr: 'Un appareil de plus du type {type} ne prend rien : toute quantité convient.',
  },
  'Room for no more of the type {type} {before}.': {
    de: 'Kein Platz für ein weiteres Gerät vom Typ {type} {before}.',
    fr: 'Aucune place pour un appareil de plus du type {type} {before}.',
  },
  'Room for {count} more of the type {type} {before}.': {
    de: 'Platz für weitere Geräte vom Typ {type} {before}: {count}.',
    fr: 'Place pour d’autres appareils du type {type} {before} : {count}.',
  },
  'Room for {count} more of the type {type} {before}, {within, plural, =0 {none} other {#}} {target}.': {
    de: 'Platz für weitere Geräte vom Typ {type} {before}: {count}, {target}: {within, plural, =0 {keine} other {#}}.',
    fr: 'Place pour d’autres appareils du type {type} {before} : {count}, {target} : {within, plural, =0 {aucun} other {#}}.',
  },
  'Room for at most {count} more of the type {type} {before}.': {
    de: 'Platz für weitere Geräte vom Typ {type} {before}: höchstens {count}.',
    fr: 'Place pour d’autres appareils du type {type} {before} : au plus {count}.',
  },
  'Room for at most {count} more of the type {type} {before}, {within, plural, =0 {none} other {at most #}} {target}.': {
    de: 'Platz für weitere Geräte vom Typ {type} {before}: höchstens {count}, {target}: {within, plural, =0 {keine} other {höchstens #}}.',
    fr: 'Place pour d’autres appareils du type {type} {before} : au plus {count}, {target} : {within, plural, =0 {aucun} other {au plus #}}.',
  },
  'before the target': { de: 'bis zum Zielwert', fr: 'avant la cible' },
  'before the rating': { de: 'bis zum Bemessungswert', fr: 'avant la valeur assignée' },
  'before the inrush that the contact may make': {
    de: 'bis zum Einschaltvermögen des Kontakts',
    fr: 'avant le pouvoir de fermeture du contact',
  },
  'before what may be used': { de: 'bis zum nutzbaren Strom', fr: 'avant le courant utilisable' },
  'before the rating of its fuse': {
    de: 'bis zum Bemessungsstrom der Sicherung',
    fr: 'avant le courant assigné de son fusible',
  },
  'before the limit': { de: 'bis zur Grenze', fr: 'avant la limite' },
  'before the reserve': { de: 'bis zur Reserve', fr: 'avant la réserve' },
  'Its inrush is not known and not reckoned with.': {
    de: 'Der Einschaltstrom ist nicht bekannt und nicht eingerechnet.',
    fr: 'Le courant d’appel n’est pas connu et n’est pas pris en compte.',
  },
  'That more load makes its enclosure warmer is not reckoned with.': {
    de: 'Dass mehr Last das Gehäuse erwärmt, ist nicht eingerechnet.',
    fr: 'L’échauffement de l’enveloppe par la charge ajoutée n’est pas pris en compte.',
  },
} satisfies Area;
