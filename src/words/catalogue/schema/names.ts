import type { Area } from '../translation.ts';

/** What rows, values of a list and outcomes are called. */
export const names = {
  'device row': { de: 'Gerätezeile', fr: 'ligne d’appareils' },
  'device type': { de: 'Gerätetyp', fr: 'type d’appareil' },
  supply: { de: 'Versorgung', fr: 'alimentation' },
  'bus branch': { de: 'Buslinie', fr: 'ligne de bus' },
  run: { de: 'Leitung', fr: 'liaison' },
  conductor: { de: 'Leiter', fr: 'conducteur' },
  'relay output': { de: 'Relaisausgang', fr: 'sortie à relais' },
  contact: { de: 'Kontakt', fr: 'contact' },
  feed: { de: 'Netzabgang', fr: 'départ secteur' },
  enclosure: { de: 'Gehäuse', fr: 'enveloppe' },
  '{n, plural, one {# device row} other {# device rows}}': {
    de: '{n, plural, one {# Gerätezeile} other {# Gerätezeilen}}',
    fr: '{n, plural, one {# ligne d’appareils} other {# lignes d’appareils}}',
  },
  '{n, plural, one {# device type} other {# device types}}': {
    de: '{n, plural, other {# Gerätetypen} one {# Gerätetyp}}',
    fr: '{n, plural, one {# type d’appareil} other {# types d’appareil}}',
  },
  '{n, plural, one {# supply} other {# supplies}}': {
    de: '{n, plural, one {# Versorgung} other {# Versorgungen}}',
    fr: '{n, plural, one {# alimentation} other {# alimentations}}',
  },
  '{n, plural, one {# bus branch} other {# bus branches}}': {
    de: '{n, plural, one {# Buslinie} other {# Buslinien}}',
    fr: '{n, plural, one {# ligne de bus} other {# lignes de bus}}',
  },
  '{n, plural, one {# run} other {# runs}}': {
    de: '{n, plural, one {# Leitung} other {# Leitungen}}',
    fr: '{n, plural, one {# liaison} other {# liaisons}}',
  },
  '{n, plural, one {# conductor} other {# conductors}}': {
    de: '{n, plural, other {# Leiter}}',
    fr: '{n, plural, one {# conducteur} other {# conducteurs}}',
  },
  '{n, plural, one {# relay output} other {# relay outputs}}': {
    de: '{n, plural, one {# Relaisausgang} other {# Relaisausgänge}}',
    fr: '{n, plural, one {# sortie à relais} other {# sorties à relais}}',
  },
  '{n, plural, one {# contact} other {# contacts}}': {
    de: '{n, plural, one {# Kontakt} other {# Kontakte}}',
    fr: '{n, plural, one {# contact} other {# contacts}}',
  },
  '{n, plural, one {# feed} other {# feeds}}': {
    de: '{n, plural, one {# Netzabgang} other {# Netzabgänge}}',
    fr: '{n, plural, one {# départ secteur} other {# départs secteur}}',
  },
  '{n, plural, one {# enclosure} other {# enclosures}}': {
    de: '{n, plural, other {# Gehäuse}}',
    fr: '{n, plural, one {# enveloppe} other {# enveloppes}}',
  },
  yes: { de: 'ja', fr: 'oui' },
  no: { de: 'nein', fr: 'non' },
  lighting: { de: 'Beleuchtung', fr: 'éclairage' },
  peripherals: { de: 'Peripherie', fr: 'périphériques' },
  control: { de: 'Steuerung', fr: 'commande' },
  other: { de: 'Sonstiges', fr: 'autre' },
  current: { de: 'Strom', fr: 'courant' },
  power: { de: 'Leistung', fr: 'puissance' },
  connected: { de: 'Anschlussstrom', fr: 'courant raccordé' },
  demand: { de: 'Strombedarf', fr: 'courant demandé' },
  resistive: { de: 'ohmsch', fr: 'résistive' },
  lamp: { de: 'Lampe', fr: 'lampe' },
  motor: { de: 'Motor', fr: 'moteur' },
  coil: { de: 'Spule', fr: 'bobine' },
  free: { de: 'Einzelgehäuse freistehend', fr: 'séparée dégagée' },
  wall: { de: 'Einzelgehäuse Wandanbau', fr: 'séparée murale' },
  'row-end-free': { de: 'Endgehäuse freistehend', fr: 'extrémité dégagée' },
  'row-end-wall': { de: 'Endgehäuse Wandanbau', fr: 'extrémité murale' },
  'row-middle-free': { de: 'Mittelgehäuse freistehend', fr: 'centrale dégagée' },
  'row-middle-wall': { de: 'Mittelgehäuse Wandanbau', fr: 'centrale murale' },
  'row-middle-wall-covered': {
    de: 'Mittelgehäuse Wandanbau mit abgedecktem Dach',
    fr: 'centrale murale à dessus recouvert',
  },
  'quick-acting at 4 ×': { de: 'flink bei 4 ×', fr: 'rapide à 4 ×' },
  'quick-acting at 10 ×': { de: 'flink bei 10 ×', fr: 'rapide à 10 ×' },
  'no working voltage': { de: 'keine Betriebsspannung', fr: 'aucune tension de service' },
} satisfies Area;
