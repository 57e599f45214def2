import type { Area } from '../translation.ts';

/** Actions on whole rows of each sheet. */
export const rowActions = {
  'New device row': { de: 'Neue Gerätezeile', fr: 'Nouvelle ligne d’appareils' },
  'New device type': { de: 'Neuer Gerätetyp', fr: 'Nouveau type d’appareil' },
  'New supply': { de: 'Neue Versorgung', fr: 'Nouvelle alimentation' },
  'New bus branch': { de: 'Neue Buslinie', fr: 'Nouvelle ligne de bus' },
  'New run': { de: 'Neue Leitung', fr: 'Nouvelle liaison' },
  'New conductor': { de: 'Neuer Leiter', fr: 'Nouveau conducteur' },
  'New relay output': { de: 'Neuer Relaisausgang', fr: 'Nouvelle sortie à relais' },
  'New contact': { de: 'Neuer Kontakt', fr: 'Nouveau contact' },
  'New feed': { de: 'Neuer Netzabgang', fr: 'Nouveau départ secteur' },
  'New enclosure': { de: 'Neues Gehäuse', fr: 'Nouvelle enveloppe' },
  'Deletion of {n, plural, one {# device row} other {# device rows}}': {
    de: 'Löschen von {n, plural, one {# Gerätezeile} other {# Gerätezeilen}}',
    fr: 'Suppression de {n, plural, one {# ligne d’appareils} other {# lignes d’appareils}}',
  },
  '{n, plural, one {# device row} other {# device rows}} deleted.': {
    de: '{n, plural, one {# Gerätezeile} other {# Gerätezeilen}} gelöscht.',
    fr: '{n, plural, one {# ligne d’appareils supprimée} other {# lignes d’appareils supprimées}}.',
  },
  'Deletion of {n, plural, one {# type} other {# types}}': {
    de: 'Löschen von {n, plural, one {# Gerätetyp} other {# Gerätetypen}}',
    fr: 'Suppression de {n, plural, one {# type d’appareil} other {# types d’appareil}}',
  },
  '{n, plural, one {# type} other {# types}} deleted.': {
    de: '{n, plural, one {# Gerätetyp} other {# Gerätetypen}} gelöscht.',
    fr: '{n, plural, one {# type d’appareil supprimé} other {# types d’appareil supprimés}}.',
  },
  'Deletion of {n, plural, one {# supply row} other {# supply rows}}': {
    de: 'Löschen von {n, plural, one {# Versorgung} other {# Versorgungen}}',
    fr: 'Suppression de {n, plural, one {# alimentation} other {# alimentations}}',
  },
  '{n, plural, one {# supply row} other {# supply rows}} deleted.': {
    de: '{n, plural, one {# Versorgung} other {# Versorgungen}} gelöscht.',
    fr: '{n, plural, one {# alimentation supprimée} other {# alimentations supprimées}}.',
  },
  'Deletion of {n, plural, one {# branch row} other {# branch rows}}': {
    de: 'Löschen von {n, plural, one {# Buslinie} other {# Buslinien}}',
    fr: 'Suppression de {n, plural, one {# ligne de bus} other {# lignes de bus}}',
  },
  '{n, plural, one {# branch row} other {# branch rows}} deleted.': {
    de: '{n, plural, one {# Buslinie} other {# Buslinien}} gelöscht.',
    fr: '{n, plural, one {# ligne de bus supprimée} other {# lignes de bus supprimées}}.',
  },
  'Deletion of {n, plural, one {# run} other {# runs}}': {
    de: 'Löschen von {n, plural, one {# Leitung} other {# Leitungen}}',
    fr: 'Suppression de {n, plural, one {# liaison} other {# liaisons}}',
  },
  '{n, plural, one {# run} other {# runs}} deleted.': {
    de: '{n, plural, one {# Leitung} other {# Leitungen}} gelöscht.',
    fr: '{n, plural, one {# liaison supprimée} other {# liaisons supprimées}}.',
  },
  'Deletion of {n, plural, one {# conductor} other {# conductors}}': {
    de: 'Löschen von {n, plural, one {# Leiter} other {# Leitern}}',
    fr: 'Suppression de {n, plural, one {# conducteur} other {# conducteurs}}',
  },
  '{n, plural, one {# conductor} other {# conductors}} deleted.': {
    de: '{n, plural, one {# Leiter} other {# Leiter}} gelöscht.',
    fr: '{n, plural, one {# conducteur supprimé} other {# conducteurs supprimés}}.',
  },
  'Deletion of {n, plural, one {# output} other {# outputs}}': {
    de: 'Löschen von {n, plural, one {# Ausgang} other {# Ausgängen}}',
    fr: 'Suppression de {n, plural, one {# sortie} other {# sorties}}',
  },
  '{n, plural, one {# output} other {# outputs}} deleted.': {
    de: '{n, plural, one {# Ausgang} other {# Ausgänge}} gelöscht.',
    fr: '{n, plural, one {# sortie supprimée} other {# sorties supprimées}}.',
  },
  'Deletion of {n, plural, one {# contact} other {# contacts}}': {
    de: 'Löschen von {n, plural, one {# Kontakt} other {# Kontakten}}',
    fr: 'Suppression de {n, plural, one {# contact} other {# contacts}}',
  },
  '{n, plural, one {# contact} other {# contacts}} deleted.': {
    de: '{n, plural, one {# Kontakt} other {# Kontakte}} gelöscht.',
    fr: '{n, plural, one {# contact supprimé} other {# contacts supprimés}}.',
  },
  'Deletion of {n, plural, one {# feed} other {# feeds}}': {
    de: 'Löschen von {n, plural, one {# Netzabgang} other {# Netzabgängen}}',
    fr: 'Suppression de {n, plural, one {# départ secteur} other {# départs secteur}}',
  },
  '{n, plural, one {# feed} other {# feeds}} deleted.': {
    de: '{n, plural, one {# Netzabgang} other {# Netzabgänge}} gelöscht.',
    fr: '{n, plural, one {# départ secteur supprimé} other {# départs secteur supprimés}}.',
  },
  'Deletion of {n, plural, one {# enclosure} other {# enclosures}}': {
    de: 'Löschen von {n, plural, one {# Gehäuse} other {# Gehäusen}}',
    fr: 'Suppression de {n, plural, one {# enveloppe} other {# enveloppes}}',
  },
  '{n, plural, one {# enclosure} other {# enclosures}} deleted.': {
    de: '{n, plural, one {# Gehäuse} other {# Gehäuse}} gelöscht.',
    fr: '{n, plural, one {# enveloppe supprimée} other {# enveloppes supprimées}}.',
  },
  'Insertion of {n, plural, one {# row} other {# rows}}': {
    de: 'Einfügen von {n, plural, one {# Zeile} other {# Zeilen}}',
    fr: 'Insertion de {n, plural, one {# ligne} other {# lignes}}',
  },
  'Move of {n, plural, one {# row} other {# rows}} up': {
    de: 'Verschieben von {n, plural, one {# Zeile} other {# Zeilen}} nach oben',
    fr: 'Déplacement de {n, plural, one {# ligne} other {# lignes}} vers le haut',
  },
  'Move of {n, plural, one {# row} other {# rows}} down': {
    de: 'Verschieben von {n, plural, one {# Zeile} other {# Zeilen}} nach unten',
    fr: 'Déplacement de {n, plural, one {# ligne} other {# lignes}} vers le bas',
  },
  'There is no row above to change places with.': {
    de: 'Darüber ist keine Zeile, mit der zu tauschen wäre.',
    fr: 'Il n’y a pas de ligne au-dessus avec laquelle échanger.',
  },
  'There is no row below to change places with.': {
    de: 'Darunter ist keine Zeile, mit der zu tauschen wäre.',
    fr: 'Il n’y a pas de ligne en dessous avec laquelle échanger.',
  },
} satisfies Area;
